package org.scalepan.spark;

import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;

/** Writes rows in another format with the engine's own readers and writers, for tests of formats. */
public final class Reformatted {
    private Reformatted() {}

    /** @param arguments format and path to read, format and path to write; formats as the engine calls them: csv, json, parquet */
    public static void main(String[] arguments) {
        SparkSession spark = SparkSession.builder().appName("reformatted").getOrCreate();
        Dataset<Row> rows = spark.read().option("header", true).format(arguments[0]).load(arguments[1]);
        rows.write()
                .mode(SaveMode.Overwrite)
                .option("header", true)
                .option("escape", "\"")
                .option("emptyValue", "")
                .format(arguments[2])
                .save(arguments[3]);
        spark.stop();
    }
}

package org.scalepan.spark;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.hadoop.fs.FSDataInputStream;
import org.apache.hadoop.fs.FSDataOutputStream;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.ArrayType;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.scalepan.AnswerLibrary;
import org.scalepan.RowAnswer;
import org.scalepan.RowQuestion;

/** Answers rows of many farms where they lie: reads, answers partition by partition, and writes beside the answers what they rest on. */
public final class FootprintJob {
    /** Written last. The engine does not read files whose names begin so. */
    private static final String STATEMENT = "_scalepan.json";

    private static final int REFUSED = 2;

    private final SparkSession spark;
    private final JobSettings settings;

    private FootprintJob(SparkSession spark, JobSettings settings) {
        this.spark = spark;
        this.settings = settings;
    }

    public static void main(String[] arguments) throws IOException {
        try {
            JobSettings settings = JobSettings.read(arguments);
            SparkSession spark = SparkSession.builder().appName("Scalepan").getOrCreate();
            try {
                System.out.println(new FootprintJob(spark, settings).run());
            } finally {
                spark.stop();
            }
        } catch (IllegalArgumentException e) {
            System.err.println(e.getMessage());
            System.exit(REFUSED);
        }
    }

    /** Answers all rows, unless that was done before; returns what the answers rest on. */
    private String run() throws IOException {
        AnswerLibrary library = ExecutorLibrary.read(settings.factors());
        settings.digest().filter(asked -> !asked.equals(library.digest())).ifPresent(asked -> {
            throw new IllegalArgumentException("the library is " + library.digest() + ", not " + asked);
        });
        RowQuestion question = library.rows(settings.question());
        String asked = asked(library);
        Optional<String> before = statementBefore();
        if (before.isPresent()) {
            if (before.get().startsWith(asked)) {
                return before.get();
            }
            throw new IllegalArgumentException(settings.output()
                    + " holds the answers to another question, or from another library; name another folder");
        }
        settings.factors().ifPresent(own -> spark.sparkContext().addFile(own, true));
        Optional<String> shipped = settings.factors().map(own -> new Path(own).getName());
        RowCounts counts = RowCounts.of(spark.sparkContext());
        write(new ExecutorLibrary(shipped, library.digest()), question, counts);
        String statement = asked + ", " + counts.json() + "}";
        try (FSDataOutputStream out = files().create(place(STATEMENT), true)) {
            out.write((statement + "\n").getBytes(StandardCharsets.UTF_8));
        }
        return statement;
    }

    private String asked(AnswerLibrary library) {
        StringBuilder question = new StringBuilder();
        settings.question().forEach((name, value) -> question.append(question.isEmpty() ? "" : "&")
                .append(name)
                .append('=')
                .append(value));
        return "{\"library\": \"" + library.digest() + "\", \"version\": \"" + library.version() + "\", \"question\": "
                + quoted(question.toString()) + ", \"input\": " + quoted(settings.input());
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private FileSystem files() throws IOException {
        return place(STATEMENT).getFileSystem(spark.sparkContext().hadoopConfiguration());
    }

    private Path place(String name) {
        return new Path(settings.output(), name);
    }

    /** What a run that ended has written; empty after none or a broken one, whose files are overwritten. */
    private Optional<String> statementBefore() throws IOException {
        if (!files().exists(place("_SUCCESS")) || !files().exists(place(STATEMENT))) {
            return Optional.empty();
        }
        try (FSDataInputStream in = files().open(place(STATEMENT))) {
            return Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8).strip());
        }
    }

    private void write(ExecutorLibrary library, RowQuestion question, RowCounts counts) {
        switch (settings.from()) {
            case CSV -> {
                Dataset<String> lines = dealt(spark.read().textFile(settings.input()));
                String head = lines.isEmpty() ? "" : spark.read().textFile(settings.input()).first();
                question.tableOfLines(head, settings.idColumn());
                AnswerPartition partition = partition(library, List.of(), counts);
                write(lines, rows -> partition.csv(rows, head), partition, question);
            }
            case JSONL -> {
                AnswerPartition partition = partition(library, List.of(), counts);
                write(dealt(spark.read().textFile(settings.input())), partition::json, partition, question);
            }
            default -> parquet(library, question, counts);
        }
    }

    private void parquet(ExecutorLibrary library, RowQuestion question, RowCounts counts) {
        Dataset<Row> rows = dealt(spark.read().parquet(settings.input()));
        if (isNested(rows.schema())) {
            AnswerPartition partition = partition(library, List.of(), counts);
            Dataset<String> lines = rows.select(functions.to_json(functions.struct(functions.col("*"))))
                    .as(Encoders.STRING());
            write(lines, partition::json, partition, question);
        } else {
            List<String> header = Arrays.asList(rows.columns());
            question.table(header, settings.idColumn());
            AnswerPartition partition = partition(library, header, counts);
            Dataset<Row> texts = rows.select(header.stream()
                    .map(name -> functions.col("`" + name + "`").cast(DataTypes.StringType))
                    .toArray(Column[]::new));
            write(texts, partition::cells, partition, question);
        }
    }

    private static boolean isNested(StructType columns) {
        return Stream.of(columns.fields())
                .anyMatch(field -> field.dataType() instanceof StructType || field.dataType() instanceof ArrayType);
    }

    private AnswerPartition partition(ExecutorLibrary library, List<String> header, RowCounts counts) {
        return AnswerPartition.of(library, settings.question(), settings.idColumn(), header, counts);
    }

    private <T> Dataset<T> dealt(Dataset<T> rows) {
        return settings.partitions().map(rows::repartition).orElse(rows);
    }

    /** How the rows of a partition are answered. */
    private interface Answering<T> extends java.io.Serializable {
        Iterator<RowAnswer> answers(Iterator<T> rows);
    }

    private <T> void write(
            Dataset<T> rows, Answering<T> answering, AnswerPartition partition, RowQuestion question) {
        String id = settings.idColumn();
        switch (settings.to()) {
            case CSV -> rows.mapPartitions(
                            (MapPartitionsFunction<T, String>)
                                    sent -> WrittenAnswers.csv(answering.answers(sent), partition.asked(), id),
                            Encoders.STRING())
                    .write()
                    .mode(SaveMode.Overwrite)
                    .option("lineSep", "\r\n")
                    .text(settings.output());
            case JSONL -> rows.mapPartitions(
                            (MapPartitionsFunction<T, String>) sent -> mapped(answering.answers(sent), RowAnswer::json),
                            Encoders.STRING())
                    .write()
                    .mode(SaveMode.Overwrite)
                    .text(settings.output());
            default -> {
                StructType columns = WrittenAnswers.columns(question);
                rows.mapPartitions(
                                (MapPartitionsFunction<T, Row>) sent -> mapped(
                                        answering.answers(sent), answer -> WrittenAnswers.row(answer, columns)),
                                Encoders.row(columns))
                        .write()
                        .mode(SaveMode.Overwrite)
                        .parquet(settings.output());
            }
        }
    }

    private static <A, B> Iterator<B> mapped(Iterator<A> from, java.util.function.Function<A, B> function) {
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return from.hasNext();
            }

            @Override
            public B next() {
                return function.apply(from.next());
            }
        };
    }
}

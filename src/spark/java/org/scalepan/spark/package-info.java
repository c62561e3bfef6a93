/** Rows of many farms on Apache Spark: the engine reads, distributes and writes; each row is answered by the core. */
package org.scalepan.spark;

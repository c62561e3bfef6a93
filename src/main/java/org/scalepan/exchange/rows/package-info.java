/** Rows of many farms and herds: read from CSV or JSON lines, each answered by itself, written in the format they came in. */
@NullMarked
package org.scalepan.exchange.rows;

import org.jspecify.annotations.NullMarked;

/** Scalepan: a defensible number beside "insects are better than beef". */
@org.jspecify.annotations.NullMarked
package org.scalepan;

/** Tables of the data package: schema, rows and cells with their places, and faults that name them. */
@NullMarked
package org.scalepan.factors.table;

import org.jspecify.annotations.NullMarked;

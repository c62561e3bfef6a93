/** Comparison of products, as a whole answer, a table, or one number for a spreadsheet cell. */
@NullMarked
package org.scalepan.web.compare;

import org.jspecify.annotations.NullMarked;

/** Comparison of products with a reference, and tables of estimates. */
@NullMarked
package org.scalepan.ask.compare;

import org.jspecify.annotations.NullMarked;

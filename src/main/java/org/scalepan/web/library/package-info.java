/** The library itself: products, published results, rows, sources, cautions and vocabularies. */
@NullMarked
package org.scalepan.web.library;

import org.jspecify.annotations.NullMarked;

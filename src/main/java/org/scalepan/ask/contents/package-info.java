/** Claims of what foods contain, checked with the range of published samples. */
@NullMarked
package org.scalepan.ask.contents;

import org.jspecify.annotations.NullMarked;

/** Numbers as they are printed: rounding to significant figures, with nothing known of what they count. */
@org.jspecify.annotations.NullMarked
package org.scalepan.quantity;

/** JSON and CSV as text: strict reading within limits, and writing of the same bytes everywhere. */
@NullMarked
package org.scalepan.exchange.text;

import org.jspecify.annotations.NullMarked;

/** The page to paste from. */
@NullMarked
package org.scalepan.web.brief;

import org.jspecify.annotations.NullMarked;

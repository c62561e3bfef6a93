/** Briefs: one page to quote from. */
@NullMarked
package org.scalepan.web.brief;

import org.jspecify.annotations.NullMarked;

/** Substitution: what a programme avoids a year, or adds, by what it displaces. */
@NullMarked
package org.scalepan.web.programme;

import org.jspecify.annotations.NullMarked;

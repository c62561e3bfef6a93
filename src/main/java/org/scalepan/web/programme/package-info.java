/** Substitution: what a programme avoids or adds per year by displacing other products. */
@NullMarked
package org.scalepan.web.programme;

import org.jspecify.annotations.NullMarked;

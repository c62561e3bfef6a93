/** Substitution: the yearly change that a programme causes by what it displaces. */
@NullMarked
package org.scalepan.ask.programme;

import org.jspecify.annotations.NullMarked;

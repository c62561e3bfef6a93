/**
 * Farms of fish: the records of ponds, tanks and cages, what their water gives off as measured, and what is conserved between feed and
 * harvest.
 */
@NullMarked
package org.scalepan.production.fish;

import org.jspecify.annotations.NullMarked;

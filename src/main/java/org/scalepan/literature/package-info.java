/**
 * Makes footprints from published results: selects the eligible results, harmonises each to the functional unit,
 * boundary and warming set asked for, and pools them.
 */
@NullMarked
package org.scalepan.literature;

import org.jspecify.annotations.NullMarked;

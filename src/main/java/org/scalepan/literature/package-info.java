/**
 * Makes footprints from published results: chooses the results that may speak, harmonises each to the functional unit,
 * boundary and warming set asked for, and pools them.
 */
@NullMarked
package org.scalepan.literature;

import org.jspecify.annotations.NullMarked;

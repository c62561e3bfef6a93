/**
 * References to the literature: read from and written as CSL-JSON, and written as BibTeX, RIS and plain text for the
 * tools people write papers with.
 */
@org.jspecify.annotations.NullMarked
package org.scalepan.cite;

/** Spreadsheet files: sheets of cells, written as Excel and as Calc read them. Knows nothing of food. */
@org.jspecify.annotations.NullMarked
package org.scalepan.sheet;

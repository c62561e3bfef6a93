package org.scalepan.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** One formula, written in the file format of each program. */
class FormulaTest {
    private static final Formula CELL = new Formula(
            "IFERROR(NUMBERVALUE(WEBSERVICE($B$3&\"/v1/value/ghg/\"&ENCODEURL(Figures!$A11)),\".\",\",\"),\"\")");

    @Test
    void a_file_of_excel_marks_the_functions_that_came_after_the_format() {
        assertEquals(
                "IFERROR(_xlfn.NUMBERVALUE(_xlfn.WEBSERVICE($B$3&\"/v1/value/ghg/\"&_xlfn.ENCODEURL(Figures!$A11)),\".\",\",\"),\"\")",
                CELL.excel());
    }

    @Test
    void a_file_of_calc_has_semicolons_brackets_and_the_vendor_of_a_function() {
        assertEquals(
                "of:=IFERROR(NUMBERVALUE(COM.MICROSOFT.WEBSERVICE([.$B$3]&\"/v1/value/ghg/\"&COM.MICROSOFT.ENCODEURL([$Figures.$A11]));\".\";\",\");\"\")",
                CELL.calc());
    }

    @Test
    void quoted_text_is_text_even_if_it_looks_like_a_cell_or_a_function() {
        assertEquals("of:=\"A1, SUM(B2) \"\"C3\"\"\"&[.D4]", new Formula("\"A1, SUM(B2) \"\"C3\"\"\"&D4").calc());
        assertEquals("\"WEBSERVICE(\"&D4", new Formula("\"WEBSERVICE(\"&D4").excel());
    }
}

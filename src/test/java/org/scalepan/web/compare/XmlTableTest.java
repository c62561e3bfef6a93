package org.scalepan.web.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.ByteArrayInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;
import org.scalepan.web.RunningScalepan;
import org.w3c.dom.Document;

/** One spreadsheet cell fetches the XML, others select from it by XPath, for which it must have no namespace. */
class XmlTableTest {
    private static final String QUESTION = "/v1/table?products=mealworm,turkey&indicators=ghg,land&format=xml";

    private static Document table() throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(
                        RunningScalepan.given().get(QUESTION).asByteArray()));
    }

    private static String pick(String path) throws Exception {
        return XPathFactory.newInstance().newXPath().evaluate(path, table());
    }

    @Test
    void the_table_has_no_namespace_and_no_document_type() throws Exception {
        assertNull(table().getDocumentElement().getNamespaceURI());
        assertNull(table().getDoctype());
        assertFalse(RunningScalepan.given().get(QUESTION).asString().contains("xmlns"));
    }

    @Test
    void a_plain_path_finds_the_figure_that_the_cell_shows() throws Exception {
        assertEquals(
                RunningScalepan.given().get("/v1/value/ghg/mealworm").asString(),
                pick("//row[product='mealworm'][indicator='ghg']/median"));
        assertEquals(
                RunningScalepan.given().get("/v1/value/land/mealworm?stat=high").asString(),
                pick("//row[product='mealworm'][indicator='land']/high"));
    }

    @Test
    void a_row_without_evidence_has_that_status_and_no_figure() throws Exception {
        assertEquals("no-evidence", pick("//row[product='turkey'][1]/status"));
        assertEquals("", pick("//row[product='turkey'][1]/median"));
        assertEquals("0", pick("//row[product='turkey'][1]/studies"));
    }

    @Test
    void the_table_says_which_library_it_comes_from() throws Exception {
        assertEquals(RunningScalepan.digest(), pick("/table/@library"));
    }

    @Test
    void there_is_one_row_for_each_product_and_indicator() throws Exception {
        assertEquals("4", pick("count(/table/row)"));
    }
}

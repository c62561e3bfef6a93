package org.scalepan.web.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.Asked;
import org.scalepan.JsonAt;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Note;
import org.scalepan.web.Reply;

/** A number was seen, and nobody can look up where: it is shown and marked, and no sentence quotes it. */
class UnidentifiedPublicationTest {
    private static final String CELL = "/v1/value/ghg/house-cricket?boundary=processing-gate";

    @Test
    void a_cell_has_the_figure_and_its_text_refuses_to_quote_it() {
        assertEquals(200, Reply.to(CELL).status());
        assertEquals(
                "House cricket, up to the processing gate: no sentence is made, because the publication behind the figure of"
                        + " house cricket is not identified and cannot be cited.",
                Reply.to(CELL + "&stat=text").body());
    }

    @Test
    void a_comparison_warns_of_it() {
        var answer = Reply.to(
                        "/v1/comparison?products=house-cricket&against=chicken&boundary=processing-gate&draws=1000")
                .json();
        assertTrue(answer.path("warnings").toString().contains("publication-not-identified"), answer::toString);
        assertFalse(answer.toString().contains("times the greenhouse gas emissions of house cricket"));
    }

    @Test
    void a_claim_about_it_gets_no_sentence_to_quote() {
        var answer = Reply.to(
                        "/v1/claim?product=house-cricket:meal&reference=house-cricket&times_less=1&boundary=processing-gate&draws=1000")
                .json();
        String instead = JsonAt.text(answer.findValue("say_instead"), "/sentence");
        assertTrue(instead.contains("is not identified and cannot be cited"), instead);
    }

    @Test
    void it_leaves_where_an_identified_study_speaks(@TempDir Path folder) {
        Evidence.PooledEvidence some = Asked.of(new OwnFolder(folder)
                        .rowLike(
                                "results",
                                "thai-cricket-cf.house-cricket.frozen.ghg.kg-protein",
                                Map.of(
                                        "id", "dreyer-2021.house-cricket.ghg",
                                        "finding", "dreyer-2021.house-cricket.ghg",
                                        "source", "dreyer-2021"))
                        .library())
                .at("processing-gate")
                .some("house-cricket");
        assertEquals(List.of("dreyer-2021"), some.sources());
        assertTrue(
                some.unused().stream().anyMatch(item -> item.reason().startsWith("its publication is not identified")));
    }

    @Test
    void alone_it_speaks_with_a_mark() {
        Evidence.PooledEvidence some =
                Asked.of(Libraries.bundled()).at("processing-gate").some("house-cricket");
        assertTrue(some.findings().allMatch(finding -> finding.says(Note.Codes.PUBLICATION_NOT_IDENTIFIED)));
    }
}

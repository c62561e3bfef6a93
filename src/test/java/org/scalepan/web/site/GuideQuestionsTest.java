package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** Questions with records in README and the guides are sent as they are written; a sentence quoted below one is its answer. */
class GuideQuestionsTest {
    private static final Pattern QUESTION = Pattern.compile("```sh\ncurl -s '?" + Documents.SERVICE
            + "(/v1/[^ ']+)'? -H 'Content-Type: application/json' -d '(\\{[^']*\\})'\n```\n(?:\n> ([^\n]*)\n)?");

    @Test
    void every_question_is_answered_and_every_quoted_sentence_is_in_its_answer() {
        int asked = 0;
        int quoted = 0;
        for (Path document : Documents.all()) {
            String written = Documents.read(document);
            StringBuilder served = new StringBuilder();
            Matcher question = QUESTION.matcher(written);
            while (question.find()) {
                asked++;
                Posted posted = Posted.to(question.group(1), "application/json", question.group(2));
                assertEquals(200, posted.status(), posted::body);
                String block = question.group();
                if (question.group(3) != null) {
                    quoted++;
                    String sentence = JsonAt.text(posted.tree(), "/sentence");
                    block = block.replace("\n> " + question.group(3), "\n> " + sentence);
                }
                question.appendReplacement(served, Matcher.quoteReplacement(block));
            }
            question.appendTail(served);
            Documents.rewrite(document, served.toString());
            assertEquals(served.toString(), written);
        }
        assertTrue(asked >= 4 && quoted >= 2, asked + " questions, " + quoted + " sentences");
    }

    @Test
    void every_question_with_records_is_found_by_this_test() {
        for (Path document : Documents.all()) {
            String written = Documents.read(document);
            long bodies = Pattern.compile(" -d '").matcher(written).results().count();

            assertEquals(bodies, QUESTION.matcher(written).results().count(), document.toString());
        }
    }
}

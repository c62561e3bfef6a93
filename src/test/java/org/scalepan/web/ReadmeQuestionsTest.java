package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;

/** The questions with records in README.md are sent as they stand there, and answered with the sentence quoted below them. */
class ReadmeQuestionsTest {
    private static final Path README = Path.of("README.md");
    private static final Pattern QUESTION = Pattern.compile(
            "```sh\ncurl -s http://127\\.0\\.0\\.1:8080(/v1/[a-z-]+) -H 'Content-Type: application/json' -d '(\\{[^']*\\})'\n```\n\n> ([^\n]*)\n");

    @Test
    void every_sentence_quoted_below_a_question_is_its_answer() throws IOException {
        String readme = Files.readString(README);
        StringBuilder asAnswered = new StringBuilder();
        Matcher question = QUESTION.matcher(readme);
        int found = 0;
        while (question.find()) {
            found++;
            Posted posted = Posted.to(question.group(1), "application/json", question.group(2));
            JsonNode answer = posted.tree();
            String block = question.group()
                    .replace(question.group(3), JsonAt.text(answer, "/sentence"));
            question.appendReplacement(asAnswered, Matcher.quoteReplacement(block));
        }
        question.appendTail(asAnswered);
        if (Boolean.getBoolean("scalepan.rewrite")) {
            Files.writeString(README, asAnswered);
        }
        assertTrue(found >= 2, "the tour asks with records");
        assertEquals(asAnswered.toString(), readme);
    }
}

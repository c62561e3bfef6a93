package org.scalepan;

import java.util.Map;

/** The example of the guide: rows answered in a program of one's own. The farms are invented. */
public final class AnswerRowsExample {
    private AnswerRowsExample() {}

    public static void main(String[] arguments) {
        AnswerLibrary library = AnswerLibrary.bundled();
        RowQuestion question = library.rows(Map.of("indicators", "ghg,land", "per", "kg-protein"));
        String farm = "{\"kind\": \"insects\", \"product\": \"mealworm\", \"harvest\": {\"kg_per_year\": 180},"
                + " \"feed\": [{\"ingredient\": \"wheat-bran\", \"kg\": 400, \"burden\": \"mass\"}]}";
        for (RowAnswer answer : new RowAnswer[] {question.answer("17", farm), question.answer("18", "{}")}) {
            for (RowFigure figure : answer.figures()) {
                double value = figure.value().orElse(Double.NaN);
                System.out.println(answer.id() + " " + figure.indicator() + ", " + figure.bound() + " " + value + " "
                        + figure.unit());
            }
            answer.errors().forEach(error -> System.out.println(answer.id() + " is wrong: " + error.message()));
        }
        System.out.println("library " + library.version() + ", " + library.digest());
    }
}

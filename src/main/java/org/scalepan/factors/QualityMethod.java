package org.scalepan.factors;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.table.Row;

/**
 * How a protein-quality score was measured.
 *
 * @param row id of the composition row that holds the score
 * @param method what digestibility was measured in: in-vitro, rats, pigs or not-stated
 * @param pattern id of the scoring pattern, where it is known
 * @param state the state of the food when it was measured, in words
 * @param limiting the limiting amino acids that the source names; empty when it names none
 */
public record QualityMethod(
        String id, String row, String method, Optional<String> pattern, String state, List<String> limiting) {
    public QualityMethod {
        limiting = List.copyOf(limiting);
    }

    static QualityMethod of(Row row) {
        return new QualityMethod(
                row.text("id"),
                row.text("row"),
                row.text("method"),
                row.optional("pattern"),
                row.text("state"),
                row.list("limiting"));
    }
}

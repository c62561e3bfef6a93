package org.scalepan.factors;

import java.util.List;
import org.scalepan.factors.table.Row;

/**
 * An amino-acid scoring pattern: what the protein of an age group ought to hold.
 *
 * @param age the age group, in words
 * @param isDefault true for the pattern of a question that names none
 * @param requirements one for each of the nine indispensable amino acids or pairs, in the order of their vocabulary
 */
public record AminoAcidPattern(
        String id, String name, String age, boolean isDefault, List<AminoAcidRequirement> requirements) {
    public AminoAcidPattern {
        requirements = List.copyOf(requirements);
    }

    static AminoAcidPattern of(Row row, List<AminoAcidRequirement> all) {
        String id = row.text("id");
        return new AminoAcidPattern(
                id,
                row.text("name"),
                row.text("age"),
                row.text("default").equals("yes"),
                all.stream()
                        .filter(requirement -> requirement.pattern().equals(id))
                        .toList());
    }
}

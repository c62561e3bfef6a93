package org.scalepan.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.footprint.FunctionalUnit;

/** The fields of a body that the questions about published products have as query parameters: read by the same rules. */
final class BodyScalars {
    private static final List<String> RULER = List.of(
            "per",
            "boundary",
            "luc",
            "gwp",
            "region",
            "grade",
            "protein",
            "quality",
            "strict",
            "coverage",
            "draws",
            "seed");

    private BodyScalars() {}

    /**
     * Takes the fields of the ruler and the sampling out of a body; their faults are then found in the parameters, and go back into the
     * body with {@link #returnFaults}.
     *
     * @param boundaries the ends of the account that this question allows
     * @param own further fields of this question that are read like parameters
     */
    static Parameters of(Body body, List<String> boundaries, String... own) {
        return read(
                body, boundaries, Stream.concat(Stream.of(own), RULER.stream()).toList(), Map.of());
    }

    /** As above, for a question that settles the functional unit itself and has no field for it. */
    static Parameters counting(Body body, List<String> boundaries, FunctionalUnit per) {
        List<String> others =
                RULER.stream().filter(field -> !field.equals("per")).toList();
        return read(body, boundaries, others, Map.of("per", per.id()));
    }

    private static Parameters read(
            Body body, List<String> boundaries, List<String> fields, Map<String, String> settled) {
        Map<String, String> given = new LinkedHashMap<>(settled);
        for (String field : fields) {
            Optional<String> value = field.equals("boundary") ? body.oneOf(field, boundaries) : body.scalar(field);
            value.ifPresent(text -> given.put(field, text));
        }
        return new Parameters(given);
    }

    /** What is wrong with the ruler is one fault, however many indicators read it. */
    static void returnFaults(Parameters scalars, Body body) {
        scalars.errors().stream().distinct().forEach(body::unknownScalar);
    }
}

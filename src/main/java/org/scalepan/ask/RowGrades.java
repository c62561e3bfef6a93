package org.scalepan.ask;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ChainStep;
import org.scalepan.production.SystemFootprint;

/** The check grade of every row of the library by its id, for figures that rest on rows of many tables. */
final class RowGrades {
    private final Map<String, Grade> byId = new HashMap<>();

    private RowGrades(Library library) {
        library.tables()
                .forEach(table -> table.rows()
                        .forEach(row -> row.optional("id")
                                .ifPresent(id -> row.optional("check")
                                        .flatMap(Grade::of)
                                        .ifPresent(grade -> byId.put(id, grade)))));
    }

    private static RowGrades of(Library library) {
        return library.view(RowGrades.class, RowGrades::new);
    }

    /** The worst grade among the factors that a farm's or herd's figure rests on; empty where it rests on none. */
    static Optional<Grade> lowest(Library library, SystemEstimate estimate) {
        RowGrades grades = of(library);
        Stream<String> flows = estimate.inventory().flows().stream()
                .filter(flow -> flow.flux()
                        .indicator()
                        .equals(estimate.scope().indicator().id()))
                .flatMap(flow -> flow.rows().stream());
        List<ChainStep> steps = estimate.system().map(SystemFootprint::chain).orElse(List.of());
        Stream<String> conversions = steps.stream()
                .filter(ChainStep.PublishedStep.class::isInstance)
                .map(step -> ((ChainStep.PublishedStep) step).row().id());
        return Stream.concat(flows, conversions)
                .flatMap(id -> Optional.ofNullable(grades.byId.get(id)).stream())
                .max(Comparator.naturalOrder());
    }
}

package org.scalepan.ask.claim;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.factors.Boundary;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/** Words the bases of a verdict: functional units, system boundaries and warming sets. */
final class BasisWording {
    private BasisWording() {}

    /** {@code per kg protein, up to the farm gate}. */
    static Message of(ComparisonBasis basis) {
        return Message.of("basis", "per", basis.per().message(), "boundary", boundary(basis));
    }

    static Message boundary(ComparisonBasis basis) {
        return basis.boundary().message(basis.indicator());
    }

    /**
     * Bases in words: the boundaries with their units, and the warming sets where the grid differs between them.
     *
     * @param chosen the cells to be worded
     * @param grid all cells
     */
    static List<Message> of(List<GridCell> chosen, List<GridCell> grid) {
        Map<Boundary, List<GridCell>> byBoundary = chosen.stream()
                .collect(Collectors.groupingBy(
                        cell -> cell.basis().boundary(), LinkedHashMap::new, Collectors.toList()));
        return byBoundary.entrySet().stream()
                .map(entry -> base(
                        entry.getValue(),
                        grid.stream()
                                .filter(cell ->
                                        cell.hasEvidence() && cell.basis().boundary() == entry.getKey())
                                .toList()))
                .toList();
    }

    private static Message base(List<GridCell> chosen, List<GridCell> atBoundary) {
        ComparisonBasis basis = chosen.get(0).basis();
        List<FunctionalUnit> units = units(chosen);
        boolean all = units.size() > 1 && units.size() == units(atBoundary).size();
        FunctionalUnit first = basis.boundary() == Boundary.ANIMAL && units.contains(FunctionalUnit.KG_LIVE)
                ? FunctionalUnit.KG_LIVE
                : units.get(0);
        Message at = all
                ? Message.of("basis.at.every", "boundary", boundary(basis), "per", first.message())
                : Message.of(
                        "basis.at",
                        "boundary",
                        boundary(basis),
                        "pers",
                        Listing.commas(
                                units.stream().map(FunctionalUnit::message).toList()));
        List<String> sets = sets(chosen);
        boolean everySet = !basis.indicator().isWarming()
                || sets.size() == sets(atBoundary).size();
        return everySet ? at : Message.of("basis.sets", "basis", at, "sets", Listing.commas(sets));
    }

    private static List<FunctionalUnit> units(List<GridCell> cells) {
        return cells.stream().map(cell -> cell.basis().per()).distinct().toList();
    }

    private static List<String> sets(List<GridCell> cells) {
        return cells.stream().map(cell -> cell.basis().gwp().name()).distinct().toList();
    }
}

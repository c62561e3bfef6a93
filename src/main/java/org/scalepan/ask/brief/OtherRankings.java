package org.scalepan.ask.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.scalepan.ask.claim.ClaimCheck;
import org.scalepan.ask.claim.GridCell;
import org.scalepan.uncertainty.Summary;

/** On which other bases a product and the reference change places. */
final class OtherRankings {
    private OtherRankings() {}

    /** For each product with a ratio on the basis asked: where the median ratio falls on the other side of one. */
    static String of(Brief brief) {
        List<String> said = new ArrayList<>();
        for (Brief.BriefRow row : brief.rows()) {
            row.check()
                    .filter(check -> check.asked().timesLess().isPresent())
                    .ifPresent(check -> said.add(row.estimate().words() + ": " + places(check)));
        }
        return said.isEmpty() ? "no ratio on this basis" : String.join("; ", said);
    }

    private static String places(ClaimCheck check) {
        boolean less = isLess(check.asked());
        List<GridCell> measured = check.cells().stream()
                .filter(cell -> cell.timesLess().isPresent())
                .toList();
        String turned = measured.stream()
                .filter(cell -> isLess(cell) != less)
                .map(cell -> "per " + cell.basis().per().words() + " "
                        + cell.basis().boundary().words(cell.basis().indicator()))
                .distinct()
                .collect(Collectors.joining(", "));
        long bases = measured.stream()
                .map(cell -> List.of(cell.basis().per(), cell.basis().boundary()))
                .distinct()
                .count();
        return turned.isEmpty()
                ? "the same order by its medians on all " + bases + " bases (units and boundaries) with figures of both"
                : "the other order by its medians " + turned;
    }

    private static boolean isLess(GridCell cell) {
        return cell.timesLess().map(Summary::median).orElse(1.0) > 1;
    }
}

package org.scalepan.ask.contents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.claim.Verdict;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.ask.nutrition.MeasuredQuality;
import org.scalepan.quantity.Print;

/** Says in sentences what published samples say to a claim of contents. */
final class ContentWording {
    private final ContentCheck check;

    ContentWording(ContentCheck check) {
        this.check = check;
    }

    String reason() {
        List<String> sentences = new ArrayList<>();
        sentences.add(asked());
        elsewhere().ifPresent(sentences::add);
        water().ifPresent(sentences::add);
        protein().ifPresent(sentences::add);
        absorbed().ifPresent(sentences::add);
        return String.join(" ", sentences);
    }

    private String asked() {
        ContentCell cell = check.asked();
        if (cell.verdict() == Verdict.NO_EVIDENCE) {
            return sentence("No figure is held" + on(cell) + ": "
                    + cell.productSide()
                            .missing()
                            .or(() -> cell.referenceSide().flatMap(ContentCell.SideOfCell::missing))
                            .orElse("nothing is published"));
        }
        return sentence(facts(cell) + ": " + cell.verdict().words() + why(cell));
    }

    /** The facts of a cell without a verdict. */
    private String facts(ContentCell cell) {
        if (cell.quantity().equals("indispensable-amino-acids")) {
            return cell.productSide()
                            .found()
                            .map(found -> Math.round(found.value()) + " ")
                            .orElse("none ")
                    + cell.unit() + " indispensable amino acids were found in "
                    + cell.food().words();
        }
        String known = start(cell) + side(cell.productSide(), cell) + " in "
                + cell.food().words();
        if (cell.referenceSide().isEmpty()) {
            return known;
        }
        return known + ", " + side(cell.referenceSide().get(), cell) + " in "
                + cell.reference().map(food -> food.words()).orElse("")
                + cell.times().map(times -> ", " + times(times)).orElse("");
    }

    private static String start(ContentCell cell) {
        return cell.basis()
                .map(basis -> "Per " + basis.words() + forms(cell, basis) + " published samples hold ")
                .orElse("Measured: " + quantity(cell) + " ");
    }

    /** Raw or dried, on each side. */
    private static String forms(ContentCell cell, Basis basis) {
        String product = form(cell.food().form());
        String reference = cell.reference().map(food -> form(food.form())).orElse(product);
        boolean same = product.equals(reference);
        return " (" + (same ? "both " + product : product + " beside " + reference)
                + (basis.isFairAcrossForms() || same ? "" : "; water decides") + ")";
    }

    private static String form(String form) {
        return form.equals("fresh") ? "raw" : form.replace('-', ' ');
    }

    private static String side(ContentCell.SideOfCell side, ContentCell cell) {
        return side.found()
                .map(found -> range(found) + " " + cell.unit()
                        + (cell.basis().isPresent() ? " " + quantity(cell) : "")
                        + (found.isThin() ? " (one sample)" : ""))
                .orElse("nothing");
    }

    static String range(SampleRange found) {
        String low = Print.content(found.low());
        String high = Print.content(found.high());
        return low.equals(high) ? Print.content(found.value()) : low + " to " + high;
    }

    private static String quantity(ContentCell cell) {
        return switch (cell.quantity()) {
            case "protein-corrected" -> "protein by their own nitrogen factors";
            case "protein" -> "crude protein";
            case "vitamin-b12" -> "vitamin B12";
            case MeasuredQuality.DIAAS -> "digestible indispensable amino acid score";
            case MeasuredQuality.PDCAAS -> "protein digestibility-corrected amino acid score";
            case "amino-acid-score" -> "amino-acid score";
            case "indispensable-amino-acids" -> "indispensable amino acids";
            default -> cell.quantity();
        };
    }

    private String times(SampleRatio times) {
        String low = Print.ratio(times.low());
        String many = Double.isInfinite(times.high())
                ? "at least " + low
                : low.equals(Print.ratio(times.high())) ? low : low + " to " + Print.ratio(times.high());
        boolean less = check.question().claimed() instanceof ContentClaimed.NutrientAmount amount && amount.less();
        return many + (less ? " times less" : " times as much");
    }

    private String why(ContentCell cell) {
        if (cell.verdict() == Verdict.OPEN && cell.thin()) {
            return ", because one sample stands for a side and how far another would lie is not seen; the evidence is thin";
        }
        if (cell.verdict() == Verdict.OPEN) {
            return ", because the ranges of published samples overlap at the claim";
        }
        return "";
    }

    private static String on(ContentCell cell) {
        return cell.basis()
                .map(basis -> " per " + basis.words() + forms(cell, basis))
                .orElse("");
    }

    /** The other bases, by verdict; those that water decides are apart. */
    private Optional<String> elsewhere() {
        List<ContentCell> others = check.cells().stream()
                .filter(cell -> !cell.asked() && !cell.decidedByWater())
                .toList();
        List<String> parts = new ArrayList<>();
        for (Verdict verdict : List.of(Verdict.HOLDS, Verdict.FAILS, Verdict.OPEN)) {
            List<String> names = others.stream()
                    .filter(cell -> cell.verdict() == verdict)
                    .map(this::named)
                    .distinct()
                    .toList();
            if (!names.isEmpty()) {
                parts.add(verdict.words() + " for " + String.join("; ", names));
            }
        }
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of(sentence("On other bases " + String.join(". On others ", parts)));
    }

    private String named(ContentCell cell) {
        String form = form(cell.food().form());
        String kind =
                cell.quantity().equals("protein-corrected") || cell.basis().isEmpty() ? quantity(cell) + ", " : "";
        return kind
                + form
                + cell.basis().map(basis -> " per " + basis.words()).orElse("")
                + cell.times().map(times -> " (" + times(times) + ")").orElse("");
    }

    private Optional<String> water() {
        return check.cells().stream()
                .filter(cell ->
                        cell.decidedByWater() && !cell.asked() && cell.times().isPresent())
                .min(Comparator.comparing(cell -> !cell.food().form().equals("dried")))
                .map(cell -> sentence("100 g of it as " + form(cell.food().form()) + " beside 100 g of raw "
                        + cell.reference().map(food -> food.product().name()).orElse("")
                        + " would be " + times(cell.times().orElseThrow())
                        + ": drying does that to any food, so it counts for no verdict"));
    }

    private Optional<String> protein() {
        if (check.question().claimed() instanceof ContentClaimed.NutrientAmount) {
            return check.protein().stream()
                    .flatMap(finding -> finding.score().stream())
                    .findFirst()
                    .map(score -> sentence("Its limiting amino acid is "
                            + score.limiting().acid().replace("-plus-", " with ")));
        }
        return check.protein().stream()
                .filter(finding -> finding.food().equals(check.asked().food()))
                .findFirst()
                .or(() -> check.protein().stream().findFirst())
                .map(ContentWording::acids);
    }

    private static String acids(ProteinFinding finding) {
        List<String> parts = new ArrayList<>();
        if (finding.unknown().isEmpty() && finding.absent().isEmpty()) {
            parts.add("every indispensable amino acid is published of it");
        } else if (finding.byScore()) {
            parts.add(
                    "a measured score is that of its scarcest indispensable amino acid and lies above zero, so that none is"
                            + " missing");
        } else {
            parts.add("not published of it: "
                    + String.join(", ", finding.unknown()).replace("-plus-", " with "));
        }
        finding.score()
                .ifPresent(score -> parts.add("its limiting amino acid is "
                        + score.limiting().acid().replace("-plus-", " with ")
                        + (score.isComplete() ? "" : ", among those published")));
        return sentence(finding.food().words().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + finding.food().words().substring(1) + ": " + String.join("; ", parts));
    }

    private Optional<String> absorbed() {
        String claimed = check.question().claimed().id();
        if (!claimed.equals("iron") && !claimed.equals("zinc")) {
            return Optional.empty();
        }
        return Optional.of(
                check.absorption().isEmpty()
                        ? "Content is not absorption: no trial with people is held for it."
                        : "Content is not absorption: what people took up in trials stands apart.");
    }

    Optional<String> instead() {
        return check.cells().stream()
                .filter(cell -> cell.counts() && cell.verdict() != Verdict.NO_EVIDENCE)
                .findFirst()
                .map(cell -> sentence(facts(cell)));
    }

    private static String sentence(String text) {
        return text + ".";
    }
}

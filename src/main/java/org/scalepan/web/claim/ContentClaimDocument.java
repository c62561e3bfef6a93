package org.scalepan.web.claim;

import java.util.List;
import java.util.stream.Stream;
import org.scalepan.ask.Warning;
import org.scalepan.ask.contents.ContentCell;
import org.scalepan.ask.contents.ContentCheck;
import org.scalepan.ask.contents.ContentChecks;
import org.scalepan.ask.nutrition.AbsorptionTrial;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.factors.Caution;
import org.scalepan.quantity.Print;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.Document;

/** Lays a checked claim of contents out to be pasted. */
final class ContentClaimDocument {
    private final ContentChecks checks;

    ContentClaimDocument(ContentChecks checks) {
        this.checks = checks;
    }

    Document document(String permalink) {
        Document.Builder document = new Document.Builder()
                .labelled("Claim", checks.claim())
                .labelled("Verdict", checks.overall().words())
                .paragraph(checks.reason())
                .labelled("What can be said", checks.instead());
        checks.checks().forEach(check -> document.add(grid(check)));
        checks.circulating()
                .forEach(claim -> document.paragraph("In circulation: \"" + claim.claim() + "\" ("
                        + String.join(", ", claim.sources()) + "). " + claim.verdictText()));
        List<String> trials = checks.checks().stream()
                .flatMap(check -> check.absorption().stream())
                .map(ContentClaimDocument::trial)
                .distinct()
                .toList();
        return document.listed("Absorption, measured in people", trials)
                .paragraph("References")
                .references(checks.references())
                .paragraph("Warnings")
                .bullets(checks.warnings().stream().map(Warning::text).toList())
                .paragraph("Cautions")
                .bullets(checks.library().cautionsAbout(checks.products(), java.util.Optional.empty()).stream()
                        .map(Caution::text)
                        .toList())
                .link(permalink)
                .untitled();
    }

    private static Block grid(ContentCheck check) {
        return new Block.TextTable(
                List.of(check.food().words(), "basis", "product", "reference", "times", "verdict", "samples"),
                check.cells().stream().map(ContentClaimDocument::row).toList());
    }

    private static List<String> row(ContentCell cell) {
        return List.of(
                cell.quantity().replace('-', ' ') + ", " + cell.food().form().replace('-', ' '),
                cell.basis().map(Basis::words).orElse("") + (cell.decidedByWater() ? " (water decides)" : ""),
                side(cell.productSide()) + " " + cell.unit(),
                cell.referenceSide().map(ContentClaimDocument::side).orElse(""),
                cell.times()
                        .map(times -> Print.ratio(times.low())
                                + (Double.isFinite(times.high()) ? " to " + Print.ratio(times.high()) : " or more"))
                        .orElse(""),
                cell.verdict().id().replace('-', ' '),
                Stream.concat(Stream.of(cell.productSide()), cell.referenceSide().stream())
                        .map(side ->
                                side.found().map(found -> "" + found.samples()).orElse("0"))
                        .collect(java.util.stream.Collectors.joining(" / ")));
    }

    private static String side(ContentCell.SideOfCell side) {
        return side.found()
                .map(found -> found.low() == found.high()
                        ? Print.content(found.value())
                        : Print.content(found.low()) + " to " + Print.content(found.high()))
                .orElse("missing");
    }

    private static String trial(AbsorptionTrial trial) {
        String many = trial.value().isPresent()
                ? Print.content(trial.value().getAsDouble())
                : Print.content(trial.low().orElseThrow()) + " to "
                        + Print.content(trial.high().orElseThrow());
        return trial.nutrient() + ", " + trial.quantity() + " " + many + " (" + trial.unit() + ") of " + trial.meal()
                + "; " + trial.people() + " (" + trial.source() + ")";
    }
}

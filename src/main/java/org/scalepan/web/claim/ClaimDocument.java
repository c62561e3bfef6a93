package org.scalepan.web.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Warning;
import org.scalepan.ask.claim.Circulating;
import org.scalepan.ask.claim.ClaimCheck;
import org.scalepan.ask.claim.ClaimChecks;
import org.scalepan.ask.claim.GridCell;
import org.scalepan.footprint.Bound;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.Document;

/** Lays a checked claim out to be pasted: verdict and reason, what can be said instead, the grid of bases, references and warnings. */
final class ClaimDocument {
    private final ClaimChecks checks;

    ClaimDocument(ClaimChecks checks) {
        this.checks = checks;
    }

    /** The document; one that rests on posted records has no permalink. */
    Document document(Optional<String> permalink) {
        Document.Builder document = new Document.Builder()
                .labelled("Claim", checks.claim())
                .labelled("Verdict", checks.overall().words())
                .paragraph(checks.reason())
                .labelled("What can be said", checks.instead().sentence());
        if (checks.instead().basis().isPresent()) {
            document.paragraph(checks.language().say("instead.caveat"));
        }
        for (ClaimCheck check : checks.checks()) {
            document.add(grid(check));
            check.circulating().forEach(one -> document.paragraph(circulating(one)));
        }
        document.paragraph("References")
                .references(checks.references())
                .paragraph("Warnings")
                .bullets(checks.warnings().stream().map(Warning::text).toList());
        permalink.ifPresent(document::link);
        return document.untitled();
    }

    private static Block grid(ClaimCheck check) {
        boolean none = check.question().claimed().times().isEmpty();
        String behind = check.asked().isModelled() ? "evidence" : "studies";
        List<String> heads = none
                ? List.of(check.side().words(), "warming set", "median (interval)", "verdict", behind)
                : List.of(check.side().words(), "warming set", "times less", "share of draws", "verdict", behind);
        return new Block.TextTable(
                heads, check.cells().stream().map(cell -> row(cell, none)).toList());
    }

    private static List<String> row(GridCell cell, boolean none) {
        Sentences sentences = new Sentences(cell.basis(), 0.9);
        List<String> columns = new ArrayList<>();
        columns.add("per " + cell.basis().per().words() + ", " + sentences.boundary());
        columns.add(cell.basis().indicator().isWarming() ? cell.basis().gwp().name() : "");
        if (none) {
            columns.add(cell.product().bound().words()
                    + cell.product().footprint().map(sentences::footprint).orElse(""));
        } else {
            columns.add(cell.timesLess()
                    .filter(ratio -> cell.bound() != Bound.NONE)
                    .map(ratio -> cell.bound().words() + Sentences.ratio(ratio))
                    .orElse(""));
            columns.add(cell.probability()
                    .map(found -> Sentences.share(found.value()))
                    .orElse(""));
        }
        columns.add(cell.verdict().id().replace('-', ' '));
        columns.add(
                cell.isModelled()
                        ? "modelled"
                        : cell.product().studies()
                                + cell.reference()
                                        .map(side -> " / " + side.studies())
                                        .orElse(""));
        return columns;
    }

    private static String circulating(Circulating one) {
        return "In circulation: \"" + one.claim().claim() + "\" ("
                + String.join(", ", one.claim().sources()) + "). "
                + one.claim().verdictText();
    }
}

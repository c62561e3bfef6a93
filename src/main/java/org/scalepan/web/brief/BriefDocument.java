package org.scalepan.web.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Warning;
import org.scalepan.ask.brief.Brief;
import org.scalepan.ask.brief.Disclosure;
import org.scalepan.ask.brief.MethodStatement;
import org.scalepan.ask.claim.ClaimCheck;
import org.scalepan.ask.claim.GridCell;
import org.scalepan.cite.BibTex;
import org.scalepan.cite.CslJson;
import org.scalepan.cite.Reference;
import org.scalepan.cite.Ris;
import org.scalepan.factors.Caution;
import org.scalepan.footprint.Bound;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.ChartSvg;
import org.scalepan.web.render.Document;

/** Lays a brief out as a page: sentence, table, picture, method, disclosure, references, cautions, and the address that gives it again. */
final class BriefDocument {
    private final Brief brief;
    private final Sentences sentences;
    private final Style style;
    private final LocalDate accessed;
    private final Optional<String> permalink;

    /** How references are written. */
    enum Style {
        TEXT,
        BIBTEX,
        RIS,
        CSL;

        String id() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * @param accessed the date of access
     * @param permalink address of the same brief; none for posted records
     */
    BriefDocument(Brief brief, Style style, LocalDate accessed, Optional<String> permalink) {
        this.brief = brief;
        this.sentences = new Sentences(
                brief.question().basis(), brief.question().sampling().coverage());
        this.style = style;
        this.accessed = accessed;
        this.permalink = permalink;
    }

    /** The picture alone. */
    String svg() {
        return chart().svg();
    }

    Document document() {
        Document.Builder document = new Document.Builder()
                .heading("What can be said")
                .bullets(brief.rows().stream().map(Brief.BriefRow::sentence).toList());
        verdict(document);
        document.heading("Figures").add(table()).add(new Block.Picture(svg(), chart().words()));
        list(document, "The reference farms", referenceFarms());
        document.heading("Method")
                .bullets(MethodStatement.of(brief))
                .heading("To be disclosed beside a public comparison")
                .add(disclosed());
        list(
                document,
                "Warnings",
                brief.grounds().warnings().stream()
                        .map(Warning::text)
                        .distinct()
                        .toList());
        list(
                document,
                "Cautions",
                brief.library().cautionsAbout(brief.grounds().products(), Optional.empty()).stream()
                        .map(Caution::text)
                        .toList());
        document.heading("References");
        references(document);
        permalink.ifPresent(link -> document.heading("This page again").add(new Block.Code(link)));
        return document.titled(title());
    }

    /** What farm each modelled figure is of, and what it does not count. */
    private List<String> referenceFarms() {
        return brief.estimates().stream()
                .distinct()
                .filter(ModelledEstimate.class::isInstance)
                .map(ModelledEstimate.class::cast)
                .flatMap(estimate ->
                        estimate
                                .farm()
                                .map(farm ->
                                        estimate.words() + ": " + farm.farm().sentence())
                                .stream())
                .toList();
    }

    private Block disclosed() {
        List<List<String>> rows = new ArrayList<>();
        Disclosure.of(brief).forEach((heading, said) -> rows.add(List.of(heading, said)));
        rows.add(List.of("Sources", source()));
        return new Block.TextTable(List.of("What", "Here"), rows);
    }

    private String title() {
        List<String> names =
                brief.rows().stream().map(row -> row.estimate().words()).toList();
        int last = names.size() - 1;
        String all = last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
        return sentences.capitalIndicator() + " of " + all + " beside "
                + brief.reference().words();
    }

    /** The claim, if there is one, and its verdict for each product. */
    private void verdict(Document.Builder document) {
        boolean particular = brief.question().claimed().times().stream().anyMatch(times -> times != 1);
        if (particular) {
            document.heading("Is it " + brief.question().claimed().words() + " than "
                            + brief.reference().words() + "?")
                    .bullets(brief.rows().stream()
                            .flatMap(row -> row.check().stream())
                            .map(check -> check.side().words() + ": "
                                    + check.overall().words() + ". " + check.reason())
                            .toList());
        }
    }

    /** The figure of a side, with what a bound is called before it. */
    private String figure(Estimate standing) {
        return standing.summary()
                .map(summary -> standing.bound().words() + sentences.footprint(summary))
                .orElse(standing instanceof ModelledEstimate ? "no modelled figure" : "no evidence");
    }

    private Block table() {
        List<List<String>> rows = new ArrayList<>();
        for (Brief.BriefRow row : brief.rows()) {
            Optional<GridCell> asked = row.asked();
            rows.add(List.of(
                    row.estimate().words(),
                    figure(row.estimate()),
                    asked.filter(cell -> cell.bound() != Bound.NONE)
                            .flatMap(cell ->
                                    cell.timesLess().map(ratio -> cell.bound().words() + Sentences.ratio(ratio)))
                            .orElse(""),
                    asked.flatMap(GridCell::probability)
                            .map(less -> Sentences.share(less.value()))
                            .orElse(""),
                    Sentences.studies(row.estimate()),
                    row.check().map(BriefDocument::paired).orElse("")));
        }
        rows.add(List.of(
                brief.reference().words(),
                figure(brief.reference()),
                "1",
                "",
                Sentences.studies(brief.reference()),
                ""));
        return new Block.TextTable(
                List.of(
                        "product",
                        "median (interval)",
                        "times less than " + brief.reference().words(),
                        "share of draws with " + brief.question().claimed().words(),
                        "evidence",
                        "ratios out of one paper"),
                rows);
    }

    private static String paired(ClaimCheck check) {
        return String.join(
                "; ",
                check.paired().stream()
                        .filter(one ->
                                one.basis().per() == check.question().basis().per()
                                        && one.basis().boundary()
                                                == check.question().basis().boundary())
                        .map(one -> one.band() + " (" + Sentences.study(one.study()) + ")")
                        .toList());
    }

    private static void list(Document.Builder document, String heading, List<String> items) {
        if (!items.isEmpty()) {
            document.heading(heading).bullets(items);
        }
    }

    private void references(Document.Builder document) {
        List<Reference> references = brief.references();
        switch (style) {
            case TEXT -> document.references(references);
            case BIBTEX -> document.add(new Block.Code(BibTex.write(references)));
            case RIS -> document.add(new Block.Code(Ris.write(references)));
            case CSL -> document.add(new Block.Code(CslJson.write(references).toPrettyString()));
        }
        document.paragraph(source());
    }

    private String source() {
        return "Scalepan, library " + brief.library().version().version() + " ("
                + brief.library().version().digest() + "), accessed " + accessed + ", and the references listed.";
    }

    private ChartSvg chart() {
        return new ChartSvg(
                brief,
                "Scalepan, library " + brief.library().version().version() + " ("
                        + brief.library().version().digest() + "), accessed " + accessed);
    }
}

package org.scalepan.web.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Warning;
import org.scalepan.ask.brief.Brief;
import org.scalepan.ask.brief.BriefStudies;
import org.scalepan.ask.brief.Disclosure;
import org.scalepan.ask.brief.Errata;
import org.scalepan.ask.brief.Headline;
import org.scalepan.ask.brief.MethodStatement;
import org.scalepan.ask.brief.OftenQuoted;
import org.scalepan.ask.claim.ClaimCheck;
import org.scalepan.ask.claim.GridCell;
import org.scalepan.cite.BibTex;
import org.scalepan.cite.CslJson;
import org.scalepan.cite.Reference;
import org.scalepan.cite.Ris;
import org.scalepan.factors.Caution;
import org.scalepan.footprint.Bound;
import org.scalepan.literature.Evidence;
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
    private final Optional<String> market;
    private final List<Reference> references;

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
     * @param market whose cautions are given; all where there is none
     */
    BriefDocument(Brief brief, Style style, LocalDate accessed, Optional<String> permalink, Optional<String> market) {
        this.brief = brief;
        this.sentences = new Sentences(
                brief.question().basis(), brief.question().sampling().coverage());
        this.style = style;
        this.accessed = accessed;
        this.permalink = permalink;
        this.market = market;
        this.references = brief.references();
    }

    /** The picture alone. */
    String svg() {
        return chart().svg();
    }

    Document document() {
        Document.Builder document = new Document.Builder()
                .heading("In one sentence")
                .paragraph(Headline.of(brief))
                .heading("What can be said")
                .bullets(brief.rows().stream().map(Brief.BriefRow::sentence).toList());
        verdict(document);
        document.heading("Figures").add(table()).add(picture());
        sideBySide(document);
        list(document, "How this differs from figures often quoted", OftenQuoted.of(brief));
        list(document, "The reference farms", referenceFarms());
        document.heading("Method").bullets(MethodStatement.of(brief));
        studies(document);
        document.heading("To be disclosed beside a public comparison").add(disclosed());
        list(
                document,
                "Warnings",
                brief.grounds().warnings().stream()
                        .map(warning -> warning.text() + about(warning))
                        .distinct()
                        .toList());
        list(document, "Corrections of the publications used", Errata.of(references));
        list(
                document,
                market.map(place -> "Cautions: " + name(place)).orElse("Cautions"),
                brief.library().cautionsAbout(brief.grounds().products(), market).stream()
                        .map(Caution::text)
                        .toList());
        document.heading("References");
        references(document);
        permalink.ifPresent(link -> document.heading("This page again").add(new Block.Code(link)));
        return document.titled(title());
    }

    private Block picture() {
        return new Block.Picture(
                svg(),
                chart().words(),
                permalink.map(link -> link.replaceFirst("[?&]format=[a-z]+", "") + "&format=svg"));
    }

    /** The published results behind the figures, each with the number of its reference. */
    private void studies(Document.Builder document) {
        List<BriefStudies.BriefStudy> studies = BriefStudies.of(brief);
        if (!studies.isEmpty()) {
            document.heading("The studies behind the figures")
                    .add(new Block.TextTable(
                            List.of(
                                    "product",
                                    "study",
                                    "printed",
                                    "on this basis, " + sentences.unit(),
                                    "weight",
                                    "seen in",
                                    "place"),
                            studies.stream()
                                    .map(one -> List.of(
                                            one.of(),
                                            label(one.source()),
                                            together(one.printed()) + "\u00a0" + kept(one.unit()),
                                            together(one.here()),
                                            Math.round(100 * one.weight()) + "\u00a0%",
                                            one.check(),
                                            one.place()))
                                    .toList()));
        }
    }

    /** {@code Dreyer et al. 2021 [3]}. */
    private String label(String source) {
        return brief.library()
                .reference(source)
                .map(reference -> reference.label() + number(source))
                .orElse(source);
    }

    /** {@code  [3]}, the number in the list of references; empty for what is not in it. */
    private String number(String source) {
        for (int i = 0; i < references.size(); i++) {
            if (references.get(i).id().equals(source)) {
                return " [" + (i + 1) + "]";
            }
        }
        return "";
    }

    /** Further indicators and references, where they are asked for. */
    private void sideBySide(Document.Builder document) {
        if (!brief.otherIndicators().isEmpty()) {
            document.heading("Other indicators")
                    .add(CrossTable.ofIndicators(brief.otherIndicators()))
                    .paragraph("Median (interval) and, behind it, how many times less than "
                            + brief.reference().words() + "; below 1 it is more.");
        }
        if (!brief.otherReferences().isEmpty()) {
            document.heading("Beside other references").add(CrossTable.ofReferences(brief.otherReferences()));
        }
    }

    /** The products that a warning is about, behind it; nothing where it is about all or about none by name. */
    private String about(Warning warning) {
        Map<String, String> named = new HashMap<>();
        brief.estimates().forEach(estimate -> {
            named.put(estimate.product().id(), estimate.words());
            if (estimate instanceof PublishedEstimate published
                    && published.evidence() instanceof Evidence.PooledEvidence some) {
                some.findings().forEach(finding -> named.put(finding.result().id(), estimate.words()));
            }
        });
        List<String> products = warning.about().stream()
                .flatMap(id -> Stream.ofNullable(named.get(id)))
                .distinct()
                .toList();
        return products.isEmpty() ? "" : " (" + String.join(", ", products) + ")";
    }

    private String name(String place) {
        return brief.library().vocabulary("markets").stream()
                .filter(entry -> entry.id().equals(place))
                .map(entry -> entry.cells().getOrDefault("name", place))
                .findFirst()
                .orElse(place);
    }

    /** Numbers one behind the other; a line may break between them. */
    private static String together(List<String> numbers) {
        return String.join("; ", numbers.stream().map(BriefDocument::kept).toList());
    }

    /** Without a break between a number and its unit. */
    private static String kept(String text) {
        return text.replace(' ', '\u00a0');
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
                .map(summary -> standing.bound().words() + kept(Sentences.interval(summary)))
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
                                    cell.timesLess().map(ratio -> cell.bound().words() + kept(Sentences.ratio(ratio))))
                            .orElse(""),
                    asked.flatMap(GridCell::probability)
                            .map(less -> Sentences.share(less.value()))
                            .orElse(""),
                    Sentences.studies(row.estimate()) + numbers(row.estimate()),
                    row.check().map(this::paired).orElse("")));
        }
        rows.add(List.of(
                brief.reference().words(),
                figure(brief.reference()),
                brief.reference().summary().isPresent() ? "1" : "",
                "",
                Sentences.studies(brief.reference()) + numbers(brief.reference()),
                ""));
        return new Block.TextTable(
                List.of(
                        "product",
                        "median (interval), " + sentences.unit(),
                        "times less than " + brief.reference().words(),
                        "share of draws with " + brief.question().claimed().words(),
                        "evidence",
                        "ratios out of one paper"),
                rows);
    }

    /** {@code  [1, 2]}: where the studies of a figure stand in the list of references. */
    private String numbers(Estimate estimate) {
        List<String> numbers = BriefStudies.of(brief).stream()
                .filter(study -> study.of().equals(estimate.words()))
                .map(study -> number(study.source()).replaceAll("[^0-9]", ""))
                .filter(number -> !number.isEmpty())
                .distinct()
                .toList();
        return numbers.isEmpty() ? "" : " [" + String.join(", ", numbers) + "]";
    }

    private String paired(ClaimCheck check) {
        return String.join(
                "; ",
                check.paired().stream()
                        .filter(one ->
                                one.basis().per() == check.question().basis().per()
                                        && one.basis().boundary()
                                                == check.question().basis().boundary())
                        .map(one -> kept(one.band()) + " ("
                                + Sentences.study(one.study())
                                        .replace(
                                                one.study().study(),
                                                label(one.study().study()))
                                + ")")
                        .toList());
    }

    private static void list(Document.Builder document, String heading, List<String> items) {
        if (!items.isEmpty()) {
            document.heading(heading).bullets(items);
        }
    }

    private void references(Document.Builder document) {
        switch (style) {
            case TEXT -> document.numbered(references);
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

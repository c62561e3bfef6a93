package org.scalepan.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Warning;
import org.scalepan.ask.brief.Brief;
import org.scalepan.ask.brief.Disclosure;
import org.scalepan.ask.brief.Method;
import org.scalepan.ask.claim.Cell;
import org.scalepan.ask.claim.ClaimCheck;
import org.scalepan.cite.BibTex;
import org.scalepan.cite.CslJson;
import org.scalepan.cite.PlainText;
import org.scalepan.cite.Reference;
import org.scalepan.cite.Ris;
import org.scalepan.factors.Caution;

/** Lays a brief out as a page: sentence, table, picture, method, disclosure, references, cautions, and how it can be had again. */
final class BriefPage {
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
     * @param accessed the day told as that of access
     * @param permalink where the same brief can be had again; none for records sent
     */
    BriefPage(Brief brief, Style style, LocalDate accessed, Optional<String> permalink) {
        this.brief = brief;
        this.sentences = new Sentences(
                brief.question().ruler(), brief.question().sampling().coverage());
        this.style = style;
        this.accessed = accessed;
        this.permalink = permalink;
    }

    /** The picture alone. */
    String svg() {
        return chart().svg();
    }

    Page page() {
        List<Page.Block> blocks = new ArrayList<>();
        blocks.add(new Page.Block.Heading("What can be said"));
        blocks.add(new Page.Block.Bullets(
                brief.rows().stream().map(Brief.Row::sentence).toList()));
        verdict(blocks);
        blocks.add(new Page.Block.Heading("Figures"));
        blocks.add(table());
        blocks.add(new Page.Block.Picture(svg(), chart().words()));
        blocks.add(new Page.Block.Heading("Method"));
        blocks.add(new Page.Block.Bullets(Method.of(brief)));
        blocks.add(new Page.Block.Heading("To be disclosed beside a public comparison"));
        List<List<String>> disclosed = new ArrayList<>();
        Disclosure.of(brief).forEach((heading, said) -> disclosed.add(List.of(heading, said)));
        disclosed.add(List.of("Sources", source()));
        blocks.add(new Page.Block.Table(List.of("What", "Here"), disclosed));
        list(
                blocks,
                "Warnings",
                brief.grounds().warnings().stream()
                        .map(Warning::text)
                        .distinct()
                        .toList());
        list(
                blocks,
                "Cautions",
                brief.library().cautions().stream()
                        .filter(caution -> brief.grounds().products().stream().anyMatch(caution::concerns))
                        .map(Caution::text)
                        .toList());
        blocks.add(new Page.Block.Heading("References"));
        references(blocks);
        permalink.ifPresent(link -> {
            blocks.add(new Page.Block.Heading("This page again"));
            blocks.add(new Page.Block.Verbatim(link));
        });
        return new Page(title(), blocks);
    }

    private String title() {
        List<String> names =
                brief.rows().stream().map(row -> row.standing().words()).toList();
        int last = names.size() - 1;
        String all = last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
        return sentences.capitalIndicator() + " of " + all + " beside "
                + brief.reference().words();
    }

    /** What is claimed, when something particular is, and what became of it for each product. */
    private void verdict(List<Page.Block> blocks) {
        boolean particular = brief.question().claimed().times().stream().anyMatch(times -> times != 1);
        if (particular) {
            blocks.add(
                    new Page.Block.Heading("Is it " + brief.question().claimed().words() + " than "
                            + brief.reference().words() + "?"));
            blocks.add(new Page.Block.Bullets(brief.rows().stream()
                    .flatMap(row -> row.check().stream())
                    .map(check -> check.side().words() + ": " + check.overall().words() + ". " + check.reason())
                    .toList()));
        }
    }

    private Page.Block table() {
        List<List<String>> rows = new ArrayList<>();
        for (Brief.Row row : brief.rows()) {
            Optional<Cell> asked = row.asked();
            rows.add(List.of(
                    row.standing().words(),
                    row.standing().summary().map(sentences::footprint).orElse("no evidence"),
                    asked.flatMap(Cell::timesLess).map(Sentences::ratio).orElse(""),
                    asked.flatMap(Cell::probability)
                            .map(less -> Sentences.share(less.value()))
                            .orElse(""),
                    Sentences.studies(row.standing(), ""),
                    row.check().map(BriefPage::paired).orElse("")));
        }
        rows.add(List.of(
                brief.reference().words(),
                brief.reference().summary().map(sentences::footprint).orElse("no evidence"),
                "1",
                "",
                Sentences.studies(brief.reference(), ""),
                ""));
        return new Page.Block.Table(
                List.of(
                        "product",
                        "median (interval)",
                        "times less than " + brief.reference().words(),
                        "probability of " + brief.question().claimed().words(),
                        "evidence",
                        "ratios out of one paper"),
                rows);
    }

    private static String paired(ClaimCheck check) {
        return String.join(
                "; ",
                check.paired().stream()
                        .filter(one ->
                                one.ruler().per() == check.question().ruler().per()
                                        && one.ruler().boundary()
                                                == check.question().ruler().boundary())
                        .map(one -> one.band() + " (" + Sentences.study(one.study()) + ")")
                        .toList());
    }

    private static void list(List<Page.Block> blocks, String heading, List<String> items) {
        if (!items.isEmpty()) {
            blocks.add(new Page.Block.Heading(heading));
            blocks.add(new Page.Block.Bullets(items));
        }
    }

    private void references(List<Page.Block> blocks) {
        List<Reference> references = brief.references();
        blocks.add(
                switch (style) {
                    case TEXT ->
                        new Page.Block.Bullets(
                                references.stream().map(PlainText::of).toList());
                    case BIBTEX -> new Page.Block.Verbatim(BibTex.write(references));
                    case RIS -> new Page.Block.Verbatim(Ris.write(references));
                    case CSL ->
                        new Page.Block.Verbatim(CslJson.write(references).toPrettyString());
                });
        blocks.add(new Page.Block.Paragraph(source()));
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

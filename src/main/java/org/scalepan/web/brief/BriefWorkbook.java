package org.scalepan.web.brief;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.brief.Brief;
import org.scalepan.ask.claim.GridCell;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.sheet.Cell;
import org.scalepan.sheet.Sheet;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.Document;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.EstimateJson;
import org.scalepan.web.render.EstimateView;
import org.scalepan.web.render.FigureSheets;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.render.PublishedEstimateView;
import org.scalepan.web.render.TextLine;
import org.scalepan.web.render.Workbook;
import org.scalepan.words.Language;

/** A brief as a workbook: its text, and its figures as numbers with the results behind them. */
final class BriefWorkbook {
    private static final int TEXT_WIDTH = 120;

    private final Library library;
    private final Brief brief;
    private final Sentences sentences;

    BriefWorkbook(Library library, Brief brief) {
        this.library = library;
        this.brief = brief;
        this.sentences = new Sentences(
                brief.question().basis(), brief.question().sampling().coverage());
    }

    /**
     * The file.
     *
     * @param path of the question; posted records have none that could be asked again
     */
    Answer answer(Document document, Optional<String> path, Map<String, Object> question) {
        ObjectNode answer = Json.object();
        answer.set("question", Json.map(question));
        answer.set("library", Envelope.library(library));
        path.ifPresent(at -> answer.put("permalink", Permalink.of(library, at, question)));
        Envelope.close(
                answer, brief.grounds().warnings(), library, brief.grounds().products(), brief.references());
        FigureSheets figures = new FigureSheets();
        figures.add(figure(brief.reference()), brief.question().basis());
        brief.rows().forEach(row -> {
            ObjectNode node = figure(row.estimate());
            row.asked()
                    .ifPresent(cell -> cell.timesLess()
                            .ifPresent(times -> node.set(
                                    "times_less", EstimateJson.bounded(times, cell.bound(), Language.ENGLISH))));
            row.asked()
                    .flatMap(GridCell::probability)
                    .ifPresent(share ->
                            node.set("share_of_draws_less", Json.object().put("value", share.value())));
            figures.add(node, brief.question().basis());
        });
        return figures.into(new Workbook(answer).with(text(document))).answer("scalepan-brief.xlsx");
    }

    private ObjectNode figure(Estimate estimate) {
        ObjectNode node = estimate instanceof PublishedEstimate published
                ? PublishedEstimateView.json(library, published, sentences, Optional.empty())
                : EstimateView.json(estimate, sentences);
        node.put("name", estimate.words());
        Json.put(node, "lowest_grade", estimate.lowestGrade(library).map(Grade::id));
        node.set("sources", Json.texts(estimate.sources(library)));
        return node;
    }

    /** The text of the page, without what other sheets hold. */
    private static Sheet text(Document document) {
        List<List<Cell>> rows = new ArrayList<>();
        document.title().ifPresent(title -> rows.add(List.of(Cell.title(title))));
        for (Block block : document.blocks()) {
            if (block instanceof Block.Heading heading) {
                rows.add(List.of());
                rows.add(List.of(Cell.head(heading.text())));
            } else if (block instanceof Block.Paragraph paragraph) {
                paragraph.lines().forEach(line -> rows.add(line(line)));
            } else if (block instanceof Block.Bullets bullets) {
                bullets.items().forEach(line -> rows.add(line(line)));
            } else if (block instanceof Block.TextTable table) {
                table.rows()
                        .forEach(row ->
                                rows.add(List.of(Cell.text(row(table, row)).wrapped())));
            } else if (block instanceof Block.Code code) {
                code.text()
                        .lines()
                        .forEach(line -> rows.add(List.of(Cell.text(line).wrapped())));
            }
        }
        return new Sheet("Brief", List.of(TEXT_WIDTH), 0, rows);
    }

    private static List<Cell> line(TextLine line) {
        return List.of(Cell.text(line.plain()).wrapped());
    }

    /** A row of a table as a line: what is named first, then each cell with its head. */
    private static String row(Block.TextTable table, List<String> row) {
        List<String> parts = new ArrayList<>();
        for (int i = 1; i < row.size(); i++) {
            if (!row.get(i).isEmpty()) {
                parts.add(row.size() == 2 ? row.get(i) : table.header().get(i) + " " + row.get(i));
            }
        }
        return row.get(0) + ": " + String.join("; ", parts);
    }
}

package org.scalepan.web.claim;

import static org.scalepan.web.render.SheetColumn.asPublished;
import static org.scalepan.web.render.SheetColumn.draws;
import static org.scalepan.web.render.SheetColumn.figure;
import static org.scalepan.web.render.SheetColumn.sentence;
import static org.scalepan.web.render.SheetColumn.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.Columns;
import org.scalepan.web.render.Workbook;

/** A checked claim as a workbook: the verdict in words, the claim on every basis, and what one paper says of both sides. */
final class ClaimWorkbook {
    private static final Columns BASES = Columns.of(
                    text("Product", "name"),
                    text("Per", "per"),
                    text("Up to", "boundary"),
                    text("Warming set", "gwp"),
                    text("The basis asked", "asked"),
                    text("Verdict", "verdict"),
                    figure("Times less (median)", "/times_less/median"),
                    figure("Times less (low)", "/times_less/low"),
                    figure("Times less (high)", "/times_less/high"),
                    text("Bound", "bound"),
                    draws("Share of draws where it holds", "/share_of_draws/value"),
                    figure("Product (median)", "/product/median"),
                    asPublished("Studies of the product", "/product/studies"),
                    figure("Reference (median)", "/reference/median"),
                    asPublished("Studies of the reference", "/reference/studies"),
                    text("Product in words", "/product/text"),
                    text("Reference in words", "/reference/text"),
                    sentence("Why there is no figure of the product", "/product/missing"),
                    sentence("Why there is no figure of the reference", "/reference/missing"))
            .named(1);
    private static final Columns PAIRED = Columns.of(
            text("Product", "name"),
            text("Study", "study"),
            text("Per", "per"),
            text("Up to", "boundary"),
            figure("Times less", "times_less"),
            figure("Low", "low"),
            figure("High", "high"),
            text("Reaches the claim", "reaches_claim"),
            text("Printed or computed", "origin"),
            text("Library rows", "rows"));
    private static final Columns DIFFERENCES = Columns.of(
                    text("Result", "result"),
                    text("Source", "source"),
                    text("Of", "of"),
                    text("On the basis asked", "on_basis_asked"),
                    text("Unit", "unit"),
                    text("Up to", "boundary"),
                    text("Warming set", "warming_set"),
                    text("Land-use change", "land_use_change"),
                    text("Allocation", "allocation"),
                    text("Region", "region"),
                    text("Year", "year"))
            .named(1);
    private static final Columns CONTENTS = Columns.of(
                    text("Product", "name"),
                    text("Form", "form"),
                    text("Form of the reference", "reference_form"),
                    text("Quantity", "quantity"),
                    text("Basis", "basis"),
                    text("The basis asked", "asked"),
                    text("Verdict", "verdict"),
                    text("Unit", "unit"),
                    asPublished("Product", "/product/value"),
                    asPublished("Product, lowest sample", "/product/low"),
                    asPublished("Product, highest sample", "/product/high"),
                    asPublished("Samples", "/product/samples"),
                    asPublished("Reference", "/reference/value"),
                    asPublished("Reference, lowest sample", "/reference/low"),
                    asPublished("Reference, highest sample", "/reference/high"),
                    asPublished("Samples of the reference", "/reference/samples"),
                    figure("Times more, lowest", "/times/low"),
                    figure("Times more", "/times/middle"),
                    figure("Times more, highest", "/times/high"),
                    text("Sources of the product", "/product/sources"),
                    text("Sources of the reference", "/reference/sources"),
                    sentence("Why there is no figure of the product", "/product/missing"),
                    sentence("Why there is no figure of the reference", "/reference/missing"))
            .named(1);
    private static final Columns CIRCULATING = Columns.of(
            text("Id", "id"),
            sentence("Claim in circulation", "claim"),
            text("Stated ratio", "stated_ratio"),
            text("Basis", "basis"),
            text("Verdict", "verdict"),
            sentence("Why", "verdict_text"),
            text("Sources", "sources"));

    /** What answers list; together where there are several. */
    private static final List<String> LISTS =
            List.of("checks", "contents", "circulating", "warnings", "cautions", "references");

    private ClaimWorkbook() {}

    /** The workbook of a claim of footprints or of contents. */
    static Answer of(ObjectNode answer) {
        return of(answer, words(answer));
    }

    /** The workbook of several claims: the verdicts one below the other, and of every table the rows of all. */
    static Answer ofSeveral(ObjectNode answer) {
        ObjectNode together = answer.deepCopy();
        List<JsonNode> words = new ArrayList<>();
        for (String list : LISTS) {
            ArrayNode all = together.putArray(list);
            Set<JsonNode> met = new LinkedHashSet<>();
            answer.path("claims").forEach(claim -> claim.at("/answer/" + list).forEach(met::add));
            all.addAll(met);
        }
        answer.path("claims").forEach(claim -> {
            words.add(Workbook.named("Of the text", claim.path("words")));
            if (claim.has("answer")) {
                words.addAll(words(claim.path("answer")));
            } else {
                claim.path("errors").forEach(error -> words.add(Workbook.named("Not checked", error.path("message"))));
            }
        });
        return of(together, words);
    }

    private static Answer of(ObjectNode answer, List<JsonNode> words) {
        Workbook workbook = new Workbook(answer).withWords("Verdict", words);
        JsonNode checks = answer.path("checks");
        List<JsonNode> differences = new ArrayList<>();
        List<JsonNode> circulating = new ArrayList<>(Workbook.rows(answer.path("circulating")));
        checks.forEach(check -> {
            check.at("/why_sources_differ/results").forEach(differences::add);
            check.path("circulating").forEach(circulating::add);
        });
        return workbook.withRows("Bases", BASES, Workbook.within(checks, "cells", "name"))
                .withRows("Contents", CONTENTS, Workbook.within(answer.path("contents"), "cells", "name"))
                .withRows("Out of one paper", PAIRED, Workbook.within(checks, "paired", "name"))
                .withRows("Why sources differ", DIFFERENCES, differences)
                .withRows("In circulation", CIRCULATING, circulating)
                .answer("scalepan-claim.xlsx");
    }

    private static List<JsonNode> words(JsonNode answer) {
        List<JsonNode> rows = new ArrayList<>();
        rows.add(Workbook.named("Claim", answer.path("claim")));
        rows.add(Workbook.named("Verdict", answer.path("verdict")));
        rows.add(Workbook.named("Why", answer.path("reason")));
        JsonNode instead = answer.path("say_instead");
        rows.add(Workbook.named("What can be said", instead.isObject() ? instead.path("sentence") : instead));
        if (instead.has("caveat")) {
            rows.add(Workbook.named("Not to be taken for", instead.path("caveat")));
        }
        answer.path("checks").forEach(check -> {
            String name = check.path("name").asText();
            rows.add(Workbook.named(name, check.path("product_sentence")));
            rows.add(Workbook.named("Beside " + name, check.path("reference_sentence")));
            if (answer.path("checks").size() > 1) {
                rows.add(Workbook.named("Of " + name, check.at("/say_instead/sentence")));
            }
        });
        return rows;
    }
}

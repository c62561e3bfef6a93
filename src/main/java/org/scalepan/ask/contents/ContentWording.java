package org.scalepan.ask.contents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.claim.Verdict;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.quantity.Print;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Figure;
import org.scalepan.words.Language;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/** Says in sentences what published samples say to a claim of contents. */
final class ContentWording {
    private static final String ACIDS = "indispensable-amino-acids";

    private final ContentCheck check;
    private final Language language;

    ContentWording(ContentCheck check, Language language) {
        this.check = check;
        this.language = language;
    }

    String reason() {
        return Stream.of(Optional.of(asked()), elsewhere(), water(), protein(), absorbed())
                .flatMap(Optional::stream)
                .map(language::say)
                .reduce((one, other) -> one + " " + other)
                .orElse("");
    }

    private Message asked() {
        ContentCell cell = check.asked();
        if (cell.verdict() == Verdict.NO_EVIDENCE) {
            Message why = cell.productSide()
                    .missing()
                    .or(() -> cell.referenceSide().flatMap(ContentCell.SideOfCell::missing))
                    .orElseGet(() -> Message.of("content-missing.nothing-published"));
            return cell.basis()
                    .map(basis -> Message.of(
                            "contents.no-figure.on", "basis", basis.message(), "forms", forms(cell, basis), "why", why))
                    .orElseGet(() -> Message.of("contents.no-figure", "why", why));
        }
        String key = cell.verdict() != Verdict.OPEN
                ? "contents.asked"
                : cell.thin() ? "contents.asked.thin" : "contents.asked.overlap";
        return Message.of(key, "facts", facts(cell), "verdict", cell.verdict().message());
    }

    /** The facts of a cell without a verdict. */
    private Message facts(ContentCell cell) {
        if (cell.quantity().equals(ACIDS)) {
            Object found = cell.productSide()
                    .found()
                    .<Object>map(range -> Math.round(range.value()))
                    .orElseGet(() -> Message.of("contents.none"));
            return Message.of(
                    "contents.acids",
                    "n",
                    found,
                    "all",
                    cell.unit().substring("of ".length()),
                    "food",
                    cell.food().name());
        }
        List<Message> sides = new ArrayList<>();
        sides.add(side(cell.productSide(), cell, cell.food()));
        cell.referenceSide().ifPresent(other -> {
            sides.add(side(other, cell, cell.reference().orElseThrow()));
            cell.times().ifPresent(times -> sides.add(times(times)));
        });
        return cell.basis()
                .map(basis -> Message.of(
                        "contents.held",
                        "basis",
                        basis.message(),
                        "forms",
                        forms(cell, basis),
                        "sides",
                        Listing.commas(sides)))
                .orElseGet(() ->
                        Message.of("contents.measured", "quantity", quantity(cell), "sides", Listing.commas(sides)));
    }

    /** Raw or dried, on each side. */
    private static Message forms(ContentCell cell, Basis basis) {
        String product = cell.food().form();
        String reference = cell.reference().map(ProductForm::form).orElse(product);
        boolean same = product.equals(reference);
        Message forms = same
                ? Message.of("contents.both", "form", form(product))
                : Message.of("contents.beside", "product", form(product), "reference", form(reference));
        return basis.isFairAcrossForms() || same ? forms : Message.of("contents.water-decides", "forms", forms);
    }

    private static Message form(String form) {
        return Message.of(form.equals("fresh") ? "contents.raw" : "form." + form);
    }

    private Message side(ContentCell.SideOfCell side, ContentCell cell, ProductForm food) {
        Message amount = side.found().map(found -> amount(found, cell)).orElseGet(() -> Message.of("contents.nothing"));
        return Message.of("contents.in", "amount", amount, "food", food.name());
    }

    private Message amount(SampleRange found, ContentCell cell) {
        String unit = language.sayOr("content-unit." + cell.unit().replace(' ', '-'), cell.unit());
        Message amount = cell.basis().isPresent()
                ? Message.of("contents.amount-of", "range", range(found), "unit", unit, "quantity", quantity(cell))
                : Message.of("contents.amount", "range", range(found), "unit", unit);
        return found.isThin() ? Message.of("contents.one-sample", "amount", amount) : amount;
    }

    private static Object range(SampleRange found) {
        String low = Print.content(found.low());
        String high = Print.content(found.high());
        return low.equals(high)
                ? new Figure(Print.content(found.value()))
                : Message.of("range", "low", new Figure(low), "high", new Figure(high));
    }

    private static DisplayName quantity(ContentCell cell) {
        String key = "content-quantity." + cell.quantity();
        return DisplayName.of(key, Language.ENGLISH.sayOr(key, cell.quantity()));
    }

    private Message times(SampleRatio times) {
        Figure low = new Figure(Print.ratio(times.low()));
        Object many = Double.isInfinite(times.high())
                ? Message.of("bounded.at-least", "figure", low)
                : low.printed().equals(Print.ratio(times.high()))
                        ? low
                        : Message.of("range", "low", low, "high", new Figure(Print.ratio(times.high())));
        boolean less = check.question().claimed() instanceof ContentClaimed.NutrientAmount amount && amount.less();
        return Message.of(less ? "contents.times-less" : "contents.times", "times", many);
    }

    /** The other bases, by verdict; those that water decides are apart. */
    private Optional<Message> elsewhere() {
        List<ContentCell> others = check.cells().stream()
                .filter(cell -> !cell.asked() && !cell.decidedByWater())
                .toList();
        List<Message> parts = new ArrayList<>();
        for (Verdict verdict : List.of(Verdict.HOLDS, Verdict.FAILS, Verdict.OPEN)) {
            List<Message> names = others.stream()
                    .filter(cell -> cell.verdict() == verdict)
                    .map(this::named)
                    .distinct()
                    .toList();
            if (!names.isEmpty()) {
                parts.add(Message.of(
                        "contents.verdict-for", "verdict", verdict.message(), "bases", Listing.semicolons(names)));
            }
        }
        return parts.stream()
                .reduce((one, other) -> Message.of("contents.on-others", "one", one, "other", other))
                .map(all -> Message.of("contents.elsewhere", "parts", all));
    }

    private Message named(ContentCell cell) {
        Message form = form(cell.food().form());
        Message named = cell.basis()
                .map(basis -> Message.of("contents.named.basis", "form", form, "basis", basis.message()))
                .orElse(form);
        if (cell.quantity().equals("protein-corrected") || cell.basis().isEmpty()) {
            named = Message.of("contents.named.quantity", "quantity", quantity(cell), "named", named);
        }
        return cell.times().isPresent()
                ? Message.of(
                        "contents.named.times",
                        "named",
                        named,
                        "times",
                        times(cell.times().get()))
                : named;
    }

    private Optional<Message> water() {
        return check.cells().stream()
                .filter(cell ->
                        cell.decidedByWater() && !cell.asked() && cell.times().isPresent())
                .min(Comparator.comparing(cell -> !cell.food().form().equals("dried")))
                .map(cell -> Message.of(
                        "contents.water",
                        "form",
                        form(cell.food().form()),
                        "reference",
                        cell.reference()
                                .map(food -> DisplayName.of(
                                        "product." + food.product().id(),
                                        food.product().name()))
                                .orElse(DisplayName.given("")),
                        "times",
                        times(cell.times().orElseThrow())));
    }

    private Optional<Message> protein() {
        if (check.question().claimed() instanceof ContentClaimed.NutrientAmount) {
            return check.protein().stream()
                    .flatMap(finding -> finding.score().stream())
                    .findFirst()
                    .map(score -> Message.of(
                            "contents.limiting", "acid", acid(score.limiting().acid())));
        }
        return check.protein().stream()
                .filter(finding -> finding.food().equals(check.asked().food()))
                .findFirst()
                .or(() -> check.protein().stream().findFirst())
                .map(ContentWording::acids);
    }

    private static DisplayName acid(String id) {
        return DisplayName.of("amino-acid." + id, id.replace("-plus-", " with "));
    }

    private static Message acids(ProteinFinding finding) {
        List<Message> parts = new ArrayList<>();
        if (finding.unknown().isEmpty() && finding.absent().isEmpty()) {
            parts.add(Message.of("contents.all-published"));
        } else if (finding.byScore()) {
            parts.add(Message.of("contents.by-score"));
        } else {
            parts.add(Message.of(
                    "contents.not-published",
                    "acids",
                    Listing.commas(
                            finding.unknown().stream().map(ContentWording::acid).toList())));
        }
        finding.score()
                .ifPresent(score -> parts.add(Message.of(
                        score.isComplete() ? "contents.its-limiting" : "contents.its-limiting.published",
                        "acid",
                        acid(score.limiting().acid()))));
        return Message.of("contents.acids-of", "food", finding.food().name(), "parts", Listing.semicolons(parts));
    }

    private Optional<Message> absorbed() {
        String claimed = check.question().claimed().id();
        if (!claimed.equals("iron") && !claimed.equals("zinc")) {
            return Optional.empty();
        }
        return Optional.of(Message.of(check.absorption().isEmpty() ? "contents.no-trial" : "contents.trials"));
    }

    Optional<String> instead() {
        return check.cells().stream()
                .filter(cell -> cell.counts() && cell.verdict() != Verdict.NO_EVIDENCE)
                .findFirst()
                .map(cell -> language.say("contents.fact", "facts", facts(cell)));
    }
}

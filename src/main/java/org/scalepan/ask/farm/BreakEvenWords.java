package org.scalepan.ask.farm;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Sentences;
import org.scalepan.footprint.Bound;
import org.scalepan.quantity.Print;
import org.scalepan.words.Figure;
import org.scalepan.words.Language;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/** Says a break-even in plain sentences. */
public final class BreakEvenWords {
    /** Beyond this a limit of the records is said as no limit. */
    private static final double NO_LIMIT = 1e9;

    private static final double NEXT_TO_NOTHING = 1e-6;

    private final BreakEven answer;
    private final Sentences sentences;
    private final Language language;

    public BreakEvenWords(BreakEven answer, Language language) {
        this.answer = answer;
        this.language = language;
        this.sentences = new Sentences(
                answer.question().basis(), answer.question().sampling().coverage(), language);
    }

    /** The answer in one to three sentences. */
    public String sentence() {
        return answer.outcome() instanceof BreakEven.FoundValue found
                ? found(found)
                : none((BreakEven.NoBreakEven) answer.outcome());
    }

    /** {@code 1 800 kg as fed a year}: a value of the entry. */
    public String value(double value) {
        String unit = answer.question().input().unit();
        String figure = language.figure(Print.footprint(value));
        return unit.isEmpty() ? figure : language.say("figure-with-unit", "figure", figure, "unit", unit(unit));
    }

    private String unit(String unit) {
        return language.sayOr("record-unit." + unit.replace(' ', '-'), unit);
    }

    /** The range over the draws, where there is one. */
    public Optional<String> range() {
        return answer.outcome() instanceof BreakEven.FoundValue found ? range(found.range()) : Optional.empty();
    }

    private Optional<String> range(BreakEven.ValueRange range) {
        if (range.low().isEmpty() && range.high().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(language.say(
                "range",
                "low",
                end(range.low(), "break-even.no-lower-end"),
                "high",
                end(range.high(), "break-even.no-upper-end")));
    }

    private static Object end(OptionalDouble end, String without) {
        return end.isPresent() ? new Figure(Print.footprint(end.getAsDouble())) : Message.of(without);
    }

    private String found(BreakEven.FoundValue found) {
        String value = language.say(found.bound().message(value(found.value())));
        Message at = answer.times().stream()
                .mapToObj(times -> Message.of(
                        "break-even.times",
                        "value",
                        value,
                        "times",
                        new Figure(Print.ratio(times)),
                        "present",
                        new Figure(Print.footprint(answer.question().input().present()))))
                .findFirst()
                .orElseGet(() -> Message.verbatim(value));
        if (found.bound() != Bound.EXACT) {
            boolean more = answer.reference().bound().minus(answer.system().bound()) == Bound.AT_MOST;
            return said("break-even.found", at) + ". " + side(found.rising() == more, more) + " " + uncounted();
        }
        Message draws = range(found.range())
                .map(range -> Message.of(
                        "break-even.draws",
                        "percent",
                        Math.round(100 * answer.question().sampling().coverage()),
                        "range",
                        range))
                .orElseGet(() -> Message.of("break-even.draws.open"));
        return said("break-even.found", at) + " (" + language.say(draws) + "). " + side(!found.rising(), false);
    }

    private String side(boolean above, boolean more) {
        return language.say("break-even." + (above ? "above" : "below") + (more ? ".more" : ".less"));
    }

    /** A sentence about the sides, the entry and a value of it. */
    private String said(String key, Object value) {
        return language.say(
                key,
                "system",
                answer.system().name(),
                "reference",
                answer.reference().name(),
                "measure",
                sentences.measure(),
                "input",
                answer.question().input().message(),
                "value",
                value);
    }

    private String none(BreakEven.NoBreakEven none) {
        return switch (none.reason()) {
            case NO_FIGURE -> said("break-even.no-figure", Listing.semicolons(withoutFigure()));
            case NOT_COUNTED -> said("break-even.not-counted", "") + " " + uncounted();
            case IMPOSSIBLE_BALANCE ->
                language.say("break-even.impossible")
                        + Stream.<Estimate>of(answer.system(), answer.reference())
                                .map(side -> Sentences.contradicted(side, language))
                                .collect(Collectors.joining());
            case NO_EFFECT -> said("break-even.no-effect", "");
            case ALWAYS_ABOVE -> limit(none.nearest().orElseThrow(), "break-even.stays-above");
            case ALWAYS_BELOW -> limit(none.nearest().orElseThrow(), "break-even.stays-below");
            case JUMP ->
                said("break-even.jump", value(none.nearest().orElseThrow().value()));
        };
    }

    private List<Message> withoutFigure() {
        return Stream.concat(
                        Stream.<Estimate>of(answer.system(), answer.reference())
                                .filter(estimate -> estimate.footprint().isEmpty())
                                .map(estimate -> Message.of(
                                        "of-side",
                                        "side",
                                        estimate.name(),
                                        "what",
                                        estimate.why().orElseGet(() -> Message.of("no-figure")))),
                        answer.system().unlike(answer.reference()).stream())
                .toList();
    }

    private String uncounted() {
        return Sentences.bounds(Stream.<Estimate>of(answer.system(), answer.reference()), language)
                .strip();
    }

    private String limit(BreakEven.SearchLimit limit, String key) {
        return language.say(
                key,
                "extreme",
                extreme(limit.value()),
                "system",
                answer.system().name(),
                "reference",
                answer.reference().name(),
                "figure",
                new Figure(Print.footprint(limit.footprint())),
                "other",
                new Figure(Print.footprint(limit.reference())),
                "unit",
                sentences.unit());
    }

    private String extreme(double value) {
        RecordInput input = answer.question().input();
        if (value == 0) {
            if (!input.unit().endsWith(" a year")) {
                return said("break-even.were", "0");
            }
            return switch (input.id()) {
                case "feed", "transport" -> language.say("break-even.without." + input.id());
                default -> said("break-even.without", "");
            };
        }
        if (value >= NO_LIMIT) {
            return said("break-even.however-large", "");
        }
        return value <= NEXT_TO_NOTHING ? said("break-even.however-small", "") : said("break-even.were", value(value));
    }
}

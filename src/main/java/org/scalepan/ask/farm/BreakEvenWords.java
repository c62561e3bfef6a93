package org.scalepan.ask.farm;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Sentences;
import org.scalepan.footprint.Bound;
import org.scalepan.quantity.Print;

/** Says a break-even in plain sentences. */
public final class BreakEvenWords {
    /** Beyond this a limit of the records is said as no limit. */
    private static final double NO_LIMIT = 1e9;

    private static final double NEXT_TO_NOTHING = 1e-6;

    private final BreakEven answer;
    private final Sentences sentences;

    public BreakEvenWords(BreakEven answer) {
        this.answer = answer;
        this.sentences = new Sentences(
                answer.question().basis(), answer.question().sampling().coverage());
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
        return Print.footprint(value) + (unit.isEmpty() ? "" : " " + unit);
    }

    /** The range over the draws, where there is one. */
    public Optional<String> range() {
        return answer.outcome() instanceof BreakEven.FoundValue found ? range(found.range()) : Optional.empty();
    }

    private Optional<String> range(BreakEven.ValueRange range) {
        if (range.low().isEmpty() && range.high().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(end(range.low(), "no lower end") + " to " + end(range.high(), "no upper end"));
    }

    private static String end(OptionalDouble end, String without) {
        return end.isPresent() ? Print.footprint(end.getAsDouble()) : without;
    }

    private String found(BreakEven.FoundValue found) {
        RecordInput input = answer.question().input();
        StringBuilder text = new StringBuilder(capital(system()))
                .append(" would equal ")
                .append(answer.reference().words())
                .append(" in ")
                .append(sentences.measure())
                .append(", if ")
                .append(input.words())
                .append(" were ")
                .append(found.bound().words())
                .append(value(found.value()));
        answer.times()
                .ifPresent(times -> text.append(", ")
                        .append(Print.ratio(times))
                        .append(" times what it is now (")
                        .append(Print.footprint(input.present()))
                        .append(')'));
        if (found.bound() != Bound.EXACT) {
            boolean more = answer.reference().bound().minus(answer.system().bound()) == Bound.AT_MOST;
            return text.append(". ")
                    .append(found.rising() == more ? "Above" : "Below")
                    .append(" that value it has ")
                    .append(more ? "more. " : "less. ")
                    .append(uncounted())
                    .toString();
        }
        String draws = range(found.range())
                .map(range ->
                        " (" + Math.round(100 * answer.question().sampling().coverage())
                                + " % interval over the draws: " + range + ")")
                .orElse(" (the draws leave it open at both ends)");
        return text.append(draws)
                .append(". ")
                .append(found.rising() ? "Below" : "Above")
                .append(" that value it has less.")
                .toString();
    }

    private String none(BreakEven.NoBreakEven none) {
        RecordInput input = answer.question().input();
        return switch (none.reason()) {
            case NO_FIGURE ->
                "There is nothing to compare: "
                        + Stream.concat(
                                        Stream.<Estimate>of(answer.system(), answer.reference())
                                                .filter(estimate ->
                                                        estimate.footprint().isEmpty())
                                                .map(estimate -> estimate.words() + ": "
                                                        + estimate.missing().orElse("no figure")),
                                        answer.system().unlike(answer.reference()).stream())
                                .collect(Collectors.joining("; "))
                        + ".";
            case NOT_COUNTED -> "No break-even can be given for " + input.words() + ". " + uncounted();
            case IMPOSSIBLE_BALANCE ->
                "No break-even can be given."
                        + Stream.<Estimate>of(answer.system(), answer.reference())
                                .map(Sentences::contradicted)
                                .collect(Collectors.joining());
            case NO_EFFECT ->
                "Changing " + input.words() + " makes no difference to " + sentences.measure() + ", of " + system()
                        + ".";
            case ALWAYS_ABOVE -> limit(none.nearest().orElseThrow(), "above");
            case ALWAYS_BELOW -> limit(none.nearest().orElseThrow(), "below");
            case JUMP ->
                "At " + value(none.nearest().orElseThrow().value()) + " the figure of " + system()
                        + " jumps past that of " + answer.reference().words()
                        + ", because a class of the guidelines' tables changes there: no value makes them equal.";
        };
    }

    private String uncounted() {
        return Sentences.bounds(Stream.<Estimate>of(answer.system(), answer.reference()))
                .strip();
    }

    private String limit(BreakEven.SearchLimit limit, String where) {
        return extreme(limit.value()) + ", " + system() + " stays " + where + " "
                + answer.reference().words() + ": "
                + Print.footprint(limit.footprint()) + " against " + Print.footprint(limit.reference()) + " "
                + sentences.unit() + ".";
    }

    private String extreme(double value) {
        RecordInput input = answer.question().input();
        if (value == 0) {
            return input.unit().endsWith(" a year")
                    ? "Even without " + input.words().replaceFirst("^all ", "any ")
                    : "Even if " + input.words() + " were 0";
        }
        if (value >= NO_LIMIT) {
            return "However large " + input.words() + " became";
        }
        return value <= NEXT_TO_NOTHING
                ? "However small " + input.words() + " became"
                : "Even if " + input.words() + " were " + value(value);
    }

    private String system() {
        return answer.system().words();
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}

package org.scalepan.ask.farm;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.ask.Warning;
import org.scalepan.quantity.Print;
import org.scalepan.words.Message;

/** Says a sensitivity in plain sentences. */
public final class SensitivityWords {
    private static final int NAMED = 3;

    private final Sensitivity answer;
    private final Sentences sentences;

    public SensitivityWords(Sensitivity answer) {
        this.answer = answer;
        this.sentences = new Sentences(
                answer.question().basis(), answer.question().sampling().coverage());
    }

    /** What the shares are shares of. */
    public String analysed() {
        String of = answer.estimate().words();
        String counted = answer.estimate().uncounted().isEmpty() ? "" : "the counted part of ";
        return answer.reference()
                .map(reference -> "the logarithm of the ratio of " + reference.words() + " to " + of + " in "
                        + sentences.measure())
                .orElse(counted + sentences.measure() + ", of " + of);
    }

    /** The inputs that matter most. */
    public String sentence() {
        if (answer.missing().isPresent()) {
            return "There is nothing to take apart: " + answer.missing().get() + ".";
        }
        if (answer.inputs().isEmpty()) {
            return "Nothing in " + analysed() + ", is uncertain here: the records are taken as exact.";
        }
        String uncounted = Stream.concat(Stream.of(answer.estimate()), answer.reference().stream())
                .filter(side -> !side.uncounted().isEmpty())
                .map(side -> Sentences.whatOf(side.uncounted(), side.name()).english())
                .collect(Collectors.joining("; "));
        String before = uncounted.isEmpty() ? "" : "Not counted, and in no share, are " + uncounted + ". ";
        List<Sensitivity.UncertainInput> first =
                answer.inputs().subList(0, Math.min(NAMED, answer.inputs().size()));
        String names = first.stream()
                .map(input ->
                        input.name().words() + " (" + percent(input.share().total()) + ")")
                .collect(Collectors.joining(", "));
        String which = switch (first.size()) {
            case 1 -> "The one input that matters to the uncertainty is ";
            case 2 -> "The two inputs that matter to the uncertainty are ";
            default -> "The three inputs that matter most to the uncertainty are ";
        };
        String entries = answer.entries().isEmpty()
                ? ""
                : " What you can change moves it most by "
                        + answer.entries().get(0).entry().words() + ".";
        return before + which + names + "; in brackets the share of the variance of " + analysed()
                + ", that each takes part in." + entries;
    }

    /** What a moved entry does. */
    public String entry(Sensitivity.EntrySwing swing) {
        return swing.entry().words() + " " + Print.footprint(swing.percent()) + " % lower or higher: the figure "
                + change(swing.change(swing.atLow())) + " or " + change(swing.change(swing.atHigh()));
    }

    private static String change(double percent) {
        return Print.footprint(Math.abs(percent)) + " % " + (percent < 0 ? "lower" : "higher");
    }

    /** What a reader must know of the shares. */
    public List<Warning> warnings() {
        List<Warning> warnings = new ArrayList<>();
        List<String> noisy =
                answer.noisy().stream().map(input -> input.stream().id()).toList();
        if (!noisy.isEmpty()) {
            warnings.add(Warning.of(
                    "noisy-shares",
                    noisy,
                    "draws",
                    answer.question().sampling().draws(),
                    "percent",
                    Math.round(100 * Sensitivity.NOISY)));
        }
        if (answer.question().notebook().isPresent()
                || answer.reference().stream().anyMatch(SystemEstimate.class::isInstance)) {
            String key = rangesRecorded() ? "warning.records-certain.ranges" : "warning.records-certain";
            warnings.add(new Warning("records-certain", Message.of(key), List.of()));
        }
        return warnings;
    }

    private boolean rangesRecorded() {
        return answer.inputs().stream().anyMatch(input -> input.name().kind() == InputName.InputKind.RECORD);
    }

    /** A share as a reader says it: an estimate slightly below zero is none. */
    private static String percent(double share) {
        double percent = 100 * share;
        return percent < 0.5 ? "less than 1 %" : Math.round(percent) + " %";
    }
}

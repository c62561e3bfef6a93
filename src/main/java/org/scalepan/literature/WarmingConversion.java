package org.scalepan.literature;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.factors.Gas;
import org.scalepan.factors.GasShares;
import org.scalepan.factors.Library;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.Rebasing;
import org.scalepan.words.Message;

/**
 * Converts a result to another warming set by the published gas shares of its product. Without shares it stays on its own set and is
 * marked, but only among sets of one metric and one horizon; a 20-year figure is never derived from 100-year ones.
 */
final class WarmingConversion {
    private static final String NOT_STATED = "not-stated";
    private static final String USUAL_METRIC = "GWP";
    private static final int USUAL_HORIZON = 100;

    private final Library library;
    private final PoolQuestion question;

    WarmingConversion(Library library, PoolQuestion question) {
        this.library = library;
        this.question = question;
    }

    /** Adds the step and its notes, or says why the result cannot be used. */
    Optional<Message> convert(PublishedResult result, List<HarmonisationStep> steps, List<Note> notes) {
        String printed = result.gwp().orElse(NOT_STATED);
        WarmingSet asked = question.gwp();
        if (printed.equals(asked.id())) {
            return Optional.empty();
        }
        Optional<WarmingSet> from = Optional.ofNullable(library.warmingSets().get(printed));
        Optional<Rebasing> rebasing = from.flatMap(set -> rebasing(result, set, steps));
        if (rebasing.isPresent()) {
            steps.add(new HarmonisationStep.ToWarmingSet(rebasing.get()));
            if (rebasing.get().isOpen()) {
                notes.add(new Note(
                        Note.Codes.OPEN_GAS_SHARES,
                        Message.of("note.open-gas-shares", "from", printed, "to", asked.id())));
            }
            return Optional.empty();
        }
        Message why = from.isEmpty()
                ? Message.of("unused.set-not-stated")
                : Message.of("unused.no-gas-shares", "set", printed);
        if (question.strict()) {
            return Optional.of(Message.of("unused.strict", "why", why));
        }
        if (!sameMetric(from)) {
            return Optional.of(Message.of("unused.not-carried", "why", why, "set", asked.id()));
        }
        notes.add(new Note(Note.Codes.OTHER_WARMING_SET, Message.of("note.kept", "why", why)));
        return Optional.empty();
    }

    /** A result that names no set is taken for one over 100 years, as is usual. */
    private boolean sameMetric(Optional<WarmingSet> from) {
        WarmingSet asked = question.gwp();
        String metric = from.map(WarmingSet::metric).orElse(USUAL_METRIC);
        int horizon = from.map(set -> set.horizonYears().orElse(USUAL_HORIZON)).orElse(USUAL_HORIZON);
        return asked.metric().equals(metric) && asked.horizonYears().orElse(USUAL_HORIZON) == horizon;
    }

    private Optional<Rebasing> rebasing(PublishedResult result, WarmingSet printed, List<HarmonisationStep> steps) {
        return shares(result, printed)
                .flatMap(shares -> Optional.ofNullable(library.warmingSets().get(shares.gwp()))
                        .map(under -> new Rebasing(afterStages(shares, steps), under, printed, question.gwp())));
    }

    /** The source's own shares for the product at that boundary; shares stated under the printed set come first. */
    private Optional<GasShares> shares(PublishedResult result, WarmingSet printed) {
        return library.gasShares().stream()
                .filter(shares -> shares.cited().source().equals(result.cited().source())
                        && shares.product().equals(result.product())
                        && shares.boundary() == result.boundary()
                        && shares.cited().check().isAtLeast(question.lowestGrade()))
                .min(Comparator.comparing(shares -> !shares.gwp().equals(printed.id())));
    }

    /**
     * The shares in what is left after stages were taken out. Land-use change and what happens behind the farm is CO2, so the known
     * shares of the other gases belong to the farm and grow as those stages go.
     */
    private static GasShares afterStages(GasShares shares, List<HarmonisationStep> steps) {
        double left = 1;
        for (HarmonisationStep step : steps) {
            if (step instanceof HarmonisationStep.ByStages stages) {
                left *= stages.multiplier();
            }
        }
        if (left >= 1) {
            return shares;
        }
        Map<Gas, Double> grown = new EnumMap<>(Gas.class);
        for (Map.Entry<Gas, Double> share : shares.known().entrySet()) {
            if (share.getKey() != Gas.CO2) {
                grown.put(share.getKey(), Math.min(1, share.getValue() / left));
            }
        }
        return new GasShares(
                shares.id(), shares.product(), shares.boundary(), shares.gwp(), grown, shares.cited(), shares.note());
    }
}

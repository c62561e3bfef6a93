package org.scalepan.production;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What to record next to make a figure truer: a gap of the records, and how much of the figure it could change.
 *
 * @param gap the open field and what stands in for it
 * @param share the part of the figure, at central values and from 0 to 1, that rests on the default; empty where the field is not
 *     counted at all, so that nobody can say how much is missing
 */
public record RecordingPriority(Gap gap, OptionalDouble share) {
    /** Defaults that carry less of the figure than this are not worth a mention; common practice, no source. */
    private static final double WORTH_RECORDING = 0.01;

    /**
     * The gaps of a figure, the one that could change it most first: what is required and not counted before any default, then the
     * defaults by the part of the figure that rests on their rows. A default without a row of the library (such as "no mortality")
     * moves the figure by an amount that only the record itself could tell, and is left out.
     */
    public static List<RecordingPriority> of(SystemFootprint system) {
        Map<String, RecordingPriority> first = new LinkedHashMap<>();
        system.inventory()
                .uncounted(system.scope())
                .forEach(gap -> first.putIfAbsent(gap.field(), new RecordingPriority(gap, OptionalDouble.empty())));
        List<RecordingPriority> defaults = new ArrayList<>();
        for (Gap gap : system.inventory().gaps()) {
            if (gap.kind() == Gap.Kind.FILLED
                    && gap.indicators().contains(system.scope().indicator().id())) {
                double share = resting(gap, system);
                if (share >= WORTH_RECORDING) {
                    defaults.add(new RecordingPriority(gap, OptionalDouble.of(share)));
                }
            }
        }
        defaults.sort(Comparator.comparingDouble(
                (RecordingPriority one) -> -one.share().orElseThrow()));
        defaults.forEach(one -> first.putIfAbsent(one.gap().field(), one));
        return List.copyOf(first.values());
    }

    /** The part of the sum of all lines, credits counted as positive, that cites a row behind the default. */
    private static double resting(Gap gap, SystemFootprint system) {
        double all = 0;
        double resting = 0;
        for (Flow flow : system.counted()) {
            double value = Math.abs(system.yearly(flow));
            all += value;
            if (flow.rows().stream().anyMatch(gap.rows()::contains)) {
                resting += value;
            }
        }
        return all == 0 ? 0 : resting / all;
    }
}

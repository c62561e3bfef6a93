package org.scalepan.literature;

import java.util.List;
import java.util.OptionalDouble;
import org.scalepan.factors.PublishedResult;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.uncertainty.Distribution;

/**
 * A published result on the basis of the question.
 *
 * @param result the row as published
 * @param reading its spread as a distribution, still in the published unit
 * @param geometricSd the geometric standard deviation assumed, when the spread is the library's assumption; 1 otherwise
 * @param lnError standard error of the natural logarithm of the number that the study found, without the conversions, above zero: the
 *     dispersion of a survey over the root of its number of farms; a spread as printed where that number is not; what is assumed of a number
 *     alone
 * @param farmLnSd standard deviation of the natural logarithm between the farms of a survey
 * @param steps the conversions, in order
 * @param notes what a reader must know
 */
public record Harmonised(
        PublishedResult result,
        Distribution reading,
        double geometricSd,
        double lnError,
        OptionalDouble farmLnSd,
        List<HarmonisationStep> steps,
        List<Note> notes) {
    public Harmonised {
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
    }

    /** True when land-use change is counted where the question leaves it out, or the other way round, and cannot be converted. */
    public boolean opposesLandUse() {
        return says(Note.Codes.LUC_NOT_SPLIT);
    }

    /** Whether a note of a code is about it. */
    public boolean says(String code) {
        return notes.stream().anyMatch(note -> note.code().equals(code));
    }

    /** True when nothing of it is at or below zero: its centre, what its source prints as an interval, and how that is read. */
    public boolean isPositive() {
        return central() > 0 && !result.intervalIncludesZero() && reading.quantile(0.05) > 0;
    }

    /** The central value after all conversions. */
    public double central() {
        double value = reading.median();
        for (HarmonisationStep step : steps) {
            value *= step.multiplier();
        }
        return value;
    }

    /** Draws of this result on the basis of the question. */
    public double[] draw(CommonRandomNumbers random) {
        double[] values = random.ownValues(result.finding(), reading);
        steps.forEach(step -> step.apply(values, random));
        return values;
    }
}

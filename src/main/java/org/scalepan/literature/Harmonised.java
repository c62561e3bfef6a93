package org.scalepan.literature;

import java.util.List;
import org.scalepan.factors.PublishedResult;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.uncertainty.Distribution;

/**
 * A published result on the basis of the question.
 *
 * @param result the row as published
 * @param reading its spread as a distribution, still in the published unit
 * @param geometricSd the geometric standard deviation assumed, when the spread is the library's assumption; 1 otherwise
 * @param steps the conversions, in order
 * @param notes what a reader must know
 */
public record Harmonised(
        PublishedResult result,
        Distribution reading,
        double geometricSd,
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

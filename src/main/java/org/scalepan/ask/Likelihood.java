package org.scalepan.ask;

import java.util.Optional;
import org.scalepan.factors.Grade;

/**
 * The words that the IPCC's Fifth Assessment Report uses for probabilities. They are for probabilities only; a count of studies
 * is said as "k of n studies".
 *
 * @see <a href="https://www.ipcc.ch/site/assets/uploads/2017/08/AR5_Uncertainty_Guidance_Note.pdf">Mastrandrea et al. 2010,
 *     guidance note, table 1</a>
 */
public final class Likelihood {
    /** The name of the scale, to be printed beside its words. */
    public static final String SCALE = "IPCC AR5 likelihood scale";

    /**
     * With fewer studies than this on either side no likelihood word is used: draws from one farm are no statement about farms. A study of
     * which a number is from memory does not count, because the number has not been verified.
     */
    public static final int FEWEST_STUDIES = 3;

    private Likelihood() {}

    /**
     * Why a likelihood word is withheld, as worded in a sentence.
     *
     * @param lowest lowest check grade of the numbers used
     */
    public static String withheld(Grade lowest) {
        return "fewer than " + FEWEST_STUDIES + " studies on a side"
                + (lowest == Grade.MEMORY ? ", those from memory not counted" : "");
    }

    /** The same as a clause: {@code fewer than 3 studies on a side are too few for a likelihood}. */
    public static String tooFew(Grade lowest) {
        return withheld(lowest) + (lowest == Grade.MEMORY ? "," : "") + " are too few for a likelihood";
    }

    /** The word for a probability about two estimates, or nothing where one of them rests on too few studies. */
    public static Optional<String> word(double probability, Estimate one, Estimate other) {
        return one.bearsLikelihood() && other.bearsLikelihood() ? Optional.of(word(probability)) : Optional.empty();
    }

    /**
     * The narrowest word that holds for a probability.
     *
     * @param probability 0 to 1
     */
    public static String word(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("a probability lies between 0 and 1, not at " + probability);
        }
        if (probability > 0.99) {
            return "virtually certain";
        }
        if (probability > 0.95) {
            return "extremely likely";
        }
        if (probability > 0.90) {
            return "very likely";
        }
        if (probability > 0.66) {
            return "likely";
        }
        if (probability >= 0.33) {
            return "about as likely as not";
        }
        if (probability >= 0.10) {
            return "unlikely";
        }
        if (probability >= 0.05) {
            return "very unlikely";
        }
        return probability >= 0.01 ? "extremely unlikely" : "exceptionally unlikely";
    }
}

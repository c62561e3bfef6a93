package org.scalepan.ask.brief;

import java.util.ArrayList;
import java.util.List;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.SystemEstimate;

/** How the figures of a brief were computed, in five lines. */
public final class MethodStatement {
    private static final String QUOTED =
            "The sentence that can be defended uses the ratio that nine draws in ten exceed, rounded down to two figures.";

    private MethodStatement() {}

    /** The lines. */
    public static List<String> of(Brief brief) {
        ComparisonBasis basis = brief.question().basis();
        Sampling sampling = brief.question().sampling();
        boolean recorded = brief.estimates().stream().anyMatch(SystemEstimate.class::isInstance);
        if (basis.evidence() == EvidenceKind.MODELLED) {
            return modelled(basis, sampling);
        }
        List<String> lines = new ArrayList<>();
        lines.add("Published results were brought to one unit (" + basis.per().words()
                + ") and one boundary by published yields and contents of the product itself; none was borrowed from another"
                + " species.");
        lines.add(
                basis.indicator().isWarming()
                        ? "Greenhouse gases are under " + basis.gwp().name()
                                + "; results under another set were converted by the gas shares published for the product, or kept"
                                + " and marked."
                        : "Results are used only where they count the same thing in the same unit.");
        lines.add(
                "Studies are pooled by a random-effects model of logarithms, each with its published error or a documented default"
                        + " and all with what they differ by; the interval is for "
                        + basis.of().message().english() + ".");
        lines.add(draws(sampling));
        lines.add(
                recorded
                        ? "The farm was computed from its own records with the library's factors and the methods of the IPCC"
                                + " guidelines, on the same basis."
                        : QUOTED);
        return List.copyOf(lines);
    }

    /** The lines of a brief of reference farms. */
    private static List<String> modelled(ComparisonBasis basis, Sampling sampling) {
        return List.of(
                "Every figure is " + ModelledEstimate.MESSAGE.english()
                        + ": it is that of a reference farm, whose inputs are published"
                        + " numbers with their ranges, computed as a farm's records are, with the library's factors and the"
                        + " methods of the IPCC guidelines.",
                "Figures were brought to one unit (" + basis.per().words()
                        + ") by published yields and contents of the product itself"
                        + (basis.indicator().isWarming()
                                ? "; greenhouse gases are under " + basis.gwp().name() + "."
                                : "."),
                "A figure with \"at least\" leaves something required out, because nobody published it; what that is stands with"
                        + " the figure. Two such figures have no ratio.",
                draws(sampling) + " The interval is for what the published ranges of practice and factors leave open.",
                QUOTED);
    }

    private static String draws(Sampling sampling) {
        return "Figures are medians over " + sampling.draws() + " Monte Carlo draws (seed " + sampling.seed()
                + ") with the interval that holds " + Math.round(100 * sampling.coverage())
                + " %; a factor that serves both sides is drawn once.";
    }
}

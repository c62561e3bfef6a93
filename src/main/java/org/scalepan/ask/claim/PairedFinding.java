package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Side;
import org.scalepan.factors.Library;
import org.scalepan.factors.PairedRatio;
import org.scalepan.literature.PairedEvidence;
import org.scalepan.literature.PairedStudy;
import org.scalepan.quantity.Print;
import org.scalepan.uncertainty.PublishedSpread;
import org.scalepan.words.Figure;
import org.scalepan.words.Language;

/**
 * What one study that assessed both sides found: the ratio that a claim should be compared with first, because unit, boundary and
 * method cancel inside it.
 *
 * @param basis the unit and boundary on which the study says it
 * @param low lower end of the band that the study prints, where it prints one
 * @param high upper end of it
 */
public record PairedFinding(ComparisonBasis basis, PairedStudy study, OptionalDouble low, OptionalDouble high) {

    /**
     * The paired findings on the basis asked, and those that studies print on others; where there are none, what can be computed on the
     * first other basis that has two results of one study.
     */
    static List<PairedFinding> between(Library library, Grid grid, Side product, Side reference) {
        List<PairedFinding> said = new ArrayList<>();
        List<PairedFinding> computed = new ArrayList<>();
        for (ComparisonBasis basis : grid.bases()) {
            boolean asked = said.isEmpty()
                    && computed.isEmpty()
                    && basis.equals(grid.bases().get(0));
            List<PairedFinding> here = on(library, basis, product, reference);
            here.stream()
                    .filter(finding -> asked || finding.study.origin() == PairedStudy.Origin.PRINTED)
                    .filter(finding -> said.stream().noneMatch(finding::repeats))
                    .forEach(said::add);
            if (computed.isEmpty()) {
                computed.addAll(here);
            }
        }
        return said.isEmpty() ? computed : said;
    }

    /** A ratio that two units share is one finding. */
    private boolean repeats(PairedFinding other) {
        return study.rows().equals(other.study.rows());
    }

    private static List<PairedFinding> on(Library library, ComparisonBasis basis, Side product, Side reference) {
        return Stream.of(product.evidence(library, basis))
                .flatMap(left -> left.stream())
                .flatMap(left -> reference.evidence(library, basis).stream()
                        .flatMap(right -> PairedEvidence.between(library, left, right).ratios().stream()))
                .map(study -> of(library, basis, product, study))
                .toList();
    }

    private static PairedFinding of(Library library, ComparisonBasis basis, Side product, PairedStudy study) {
        Set<String> rows = Set.copyOf(study.rows());
        List<double[]> bands = library.pairedRatios().stream()
                .filter(ratio -> rows.contains(ratio.id()))
                .flatMap(ratio -> band(ratio, product).stream())
                .toList();
        return new PairedFinding(
                basis,
                study,
                bands.stream().mapToDouble(band -> band[0]).min(),
                bands.stream().mapToDouble(band -> band[1]).max());
    }

    /** The printed band, turned round where the row has the sides the other way. */
    private static List<double[]> band(PairedRatio ratio, Side product) {
        PublishedSpread printed = ratio.printed();
        if (printed.low().isEmpty() || printed.high().isEmpty()) {
            return List.of();
        }
        double low = printed.low().getAsDouble();
        double high = printed.high().getAsDouble();
        boolean straight = ratio.product().equals(product.product().id());
        return List.of(straight ? new double[] {low, high} : new double[] {1 / high, 1 / low});
    }

    /** The ratio as it is said: the band that the paper prints, else the ratio with its band of 90 %, else the ratio alone. */
    public String band() {
        return band(Language.ENGLISH);
    }

    String band(Language language) {
        if (low.isPresent() && high.isPresent()) {
            return language.say("range", "low", figure(low.getAsDouble()), "high", figure(high.getAsDouble()));
        }
        return study.origin() == PairedStudy.Origin.PRINTED
                ? language.figure(Print.ratio(study.central()))
                : language.say(
                        "interval",
                        "median",
                        figure(study.central()),
                        "low",
                        figure(study.quantile(0.05)),
                        "high",
                        figure(study.quantile(0.95)));
    }

    private static Figure figure(double ratio) {
        return new Figure(Print.ratio(ratio));
    }

    /** Whether a ratio reaches a claim. */
    public enum Reach {
        YES,
        NO,
        /** Its band begins below the claim and ends above. */
        STRADDLES;

        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * Whether the ratio is at least the one claimed, by its band where it has one.
     *
     * @param times the ratio claimed
     */
    public Reach reaches(double times) {
        boolean computed = study.origin() == PairedStudy.Origin.COMPUTED;
        if (low.orElse(computed ? study.quantile(0.05) : study.central()) >= times) {
            return Reach.YES;
        }
        return high.orElse(computed ? study.quantile(0.95) : study.central()) < times ? Reach.NO : Reach.STRADDLES;
    }
}

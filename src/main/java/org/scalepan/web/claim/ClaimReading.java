package org.scalepan.web.claim;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.claim.ClaimPlan;
import org.scalepan.ask.claim.ClaimQuestion;
import org.scalepan.ask.claim.Claimed;
import org.scalepan.ask.claim.ParsedClaim;
import org.scalepan.ask.claim.Subject;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;

/**
 * Reads a claim out of parameters. A sentence is another way to write the same parameters: it is parsed into parameters, and then all are
 * read by the same rules.
 */
final class ClaimReading {
    static final String PRODUCT = "product";
    static final String REFERENCE = "reference";
    static final String TEXT = "text";
    /** The fields that say what is claimed. */
    static final String[] CLAIM = {"indicator", "times_less", "percent_less", "none"};

    private static final List<String> KINDS = List.of("times_less", "percent_less", "none");
    private static final double MOST_TIMES = 1e9;
    private static final double MOST_PERCENT = 99.9999999;

    private final Library library;
    private final Input parameters;

    ClaimReading(Library library, Input parameters) {
        this.library = library;
        this.parameters = parameters;
    }

    /**
     * Takes what was understood of a sentence as parameters.
     *
     * @param ownSides names of the sides given as fields of their own, which the sentence must not repeat
     */
    void take(ParsedClaim read, List<String> ownSides) {
        Stream.concat(
                        KINDS.stream(),
                        parameters.isQuery() ? Stream.of("times_more", ContentClaimReading.CONTENT) : Stream.empty())
                .filter(name -> parameters.raw(name).isPresent())
                .forEach(name -> parameters.fault(name, "the claim stands in text already; leave " + name + " out"));
        read.faults().forEach(fault -> parameters.unclear(TEXT, fault.message(), fault.didYouMean()));
        for (Map.Entry<String, String> field : read.fields().entrySet()) {
            boolean side = field.getKey().equals(PRODUCT) || field.getKey().equals(REFERENCE);
            if (side && ownSides.contains(field.getKey())) {
                continue;
            }
            if (!side
                    && parameters
                            .raw(field.getKey())
                            .filter(given -> !given.equals(field.getValue()))
                            .isPresent()) {
                if (!field.getKey().equals("indicator")) {
                    parameters.fault(
                            field.getKey(),
                            "text says " + field.getKey() + "=" + field.getValue() + "; leave one of them out");
                }
                continue;
            }
            parameters.add(field.getKey(), field.getValue());
        }
    }

    /** The subject of the claim: a product, or every insect. */
    Optional<Subject> subject() {
        if (parameters.raw(PRODUCT).filter(Subject.INSECTS::equals).isPresent()) {
            parameters.resolve(PRODUCT, Subject.INSECTS);
            return Optional.of(Subject.insects(library));
        }
        return new ProductReading(library, parameters)
                .one(PRODUCT)
                .map(product -> Subject.of(new Side.PublishedSide(product)));
    }

    /** The reference; a claim of zero impact needs none. */
    Optional<Side> reference() {
        boolean none = parameters.raw("none").isPresent();
        if (none && parameters.raw(REFERENCE).isEmpty()) {
            return Optional.empty();
        }
        return new ProductReading(library, parameters).one(REFERENCE).map(Side.PublishedSide::new);
    }

    /** The claimed amount, in exactly one of the three forms. */
    Optional<Claimed> claimed() {
        List<String> given =
                KINDS.stream().filter(name -> parameters.raw(name).isPresent()).toList();
        if (parameters.raw("none").isPresent()) {
            parameters.oneOf("none", List.of("yes"), "yes");
        }
        if (given.size() != 1) {
            parameters.fault(
                    given.isEmpty() ? "times_less" : given.get(1),
                    "give exactly one claim: times_less (times_less=100), percent_less (percent_less=80) or none (none=yes)"
                            + (given.isEmpty() ? ", or a sentence as text" : ""));
            return Optional.empty();
        }
        int before = parameters.faults().size();
        Claimed claimed = switch (given.get(0)) {
            case "times_less" -> new Claimed.TimesLess(parameters.number("times_less", 1e-9, MOST_TIMES, 1));
            case "percent_less" -> new Claimed.PercentLess(parameters.number("percent_less", 1e-9, MOST_PERCENT, 50));
            default -> new Claimed.NoneAtAll();
        };
        return parameters.faults().size() == before ? Optional.of(claimed) : Optional.empty();
    }

    /** The whole question; empty after an error. */
    Optional<ClaimPlan> plan(Optional<Subject> subject, Optional<Side> reference, Optional<Claimed> claimed) {
        boolean recorded = Stream.concat(subject.stream().flatMap(about -> about.sides().stream()), reference.stream())
                .anyMatch(Side.Recorded.class::isInstance);
        ComparisonBasisReading reading = ComparisonBasisReading.of(library, parameters, recorded);
        ComparisonBasis basis = reading.basis(reading.indicator("indicator", "ghg"));
        Sampling sampling = reading.sampling();
        if (subject.isPresent() && reference.isPresent()) {
            subject.get()
                    .obstacleTo(reference.get())
                    .ifPresent(why -> parameters.fault(
                            reference.get() instanceof Side.Recorded ? "reference_system" : REFERENCE, why));
        }
        boolean whole = subject.isPresent()
                && claimed.isPresent()
                && (reference.isPresent() || claimed.get().times().isEmpty());
        if (!whole || !parameters.faults().isEmpty()) {
            return Optional.empty();
        }
        ClaimPlan plan = new ClaimPlan(
                library,
                new ClaimQuestion(
                        reference.map(subject.get()::without).orElse(subject.get()),
                        reference,
                        claimed.get(),
                        basis,
                        sampling));
        if (!plan.isAffordable()) {
            parameters.tooMuch(
                    "draws",
                    "draws may be at most " + ClaimPlan.MOST_DRAWS / plan.footprints() + " for the "
                            + plan.footprints() + " footprints of this claim: a claim is checked with at most "
                            + ClaimPlan.MOST_DRAWS + " draws in all");
            return Optional.empty();
        }
        return Optional.of(plan);
    }

    /** The names of the sides that parameters give. */
    List<String> givenSides() {
        return Stream.of(PRODUCT, REFERENCE)
                .filter(name -> parameters.raw(name).isPresent())
                .toList();
    }
}

package org.scalepan.web.programme;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.programme.Baseline;
import org.scalepan.ask.programme.EqualBasis;
import org.scalepan.ask.programme.FedAnimal;
import org.scalepan.ask.programme.Prices;
import org.scalepan.ask.programme.Programme;
import org.scalepan.ask.programme.SubstitutionQuestion;
import org.scalepan.ask.programme.Use;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.exchange.read.SideReading;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.input.Input;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Limits;

/** Reads from a body what a programme delivers, what it displaces and at what rate. */
final class SubstitutionReading {
    private static final double MOST = 1e12;

    private final Library library;
    private final Input body;

    SubstitutionReading(Library library, Input body) {
        this.library = library;
        this.body = body;
    }

    /** The question; refused with all its errors at once. All defaults are then in the resolved question. */
    SubstitutionQuestion question() {
        Use use = body.oneOf("as", List.of(Use.FOOD.id(), Use.FEED.id()))
                        .filter(Use.FEED.id()::equals)
                        .isPresent()
                ? Use.FEED
                : Use.FOOD;
        body.resolve("as", use.id());
        Optional<FedAnimal> animal = animal(use);
        boolean credit = SideReading.credit(body);
        SideReading sides = new SideReading(library, credit);
        Optional<Side> product = product(use, sides);
        Optional<Programme> programme = new ProgrammeReading(body, use).programme();
        Optional<String> currency = body.text("currency");
        Prices prices = new Prices(
                currency.orElse(""), body.number("price_per_kg", 0, MOST), body.number("cost_per_year", 0, MOST));
        Optional<Baseline> baseline = new BaselineReading(body, use, sides).baseline(currency);
        boolean priced = checkCurrency(prices, baseline);
        double rate = body.needNumber("displacement_rate", 0, 1);
        EqualBasis equalBasis = basis(use);
        List<Side> displaced = displaced(baseline);
        List<Side> alternatives = alternatives(use, Stream.concat(product.stream(), displaced.stream()));
        boolean recorded =
                Stream.concat(product.stream(), displaced.stream()).anyMatch(Side.Recorded.class::isInstance);
        ComparisonBasisReading reading = ComparisonBasisReading.ofProgramme(
                        library, body, use, recorded, equalBasis.counted())
                .inBody();
        List<Indicator> indicators = indicators();
        body.resolve("credit", credit ? "yes" : "no");
        List<ComparisonBasis> bases = indicators.stream().map(reading::basis).toList();
        if (!body.has("boundary")) {
            body.unresolve("boundary");
        }
        Sampling sampling = reading.sampling();
        int estimates = 1 + Math.max(1, displaced.size()) + alternatives.size();
        reading.afford(sampling, estimates * bases.size());
        body.close();
        InputProblem.refuseIfWrong(body);
        SubstitutionQuestion question = new SubstitutionQuestion(
                use,
                animal,
                product.orElseThrow(),
                programme.orElseThrow(),
                baseline.orElseThrow(),
                rate,
                equalBasis,
                bases,
                alternatives,
                priced ? Optional.of(prices) : Optional.empty(),
                sampling);
        question.obstacles(library).forEach(body::fault);
        InputProblem.refuseIfWrong(body);
        return question;
    }

    private Optional<FedAnimal> animal(Use use) {
        List<String> animals = Stream.of(FedAnimal.values()).map(FedAnimal::id).toList();
        if (use == Use.FEED) {
            Optional<String> animal = body.needOneOf("animal", animals);
            animal.ifPresent(id -> body.resolve("animal", id));
            return animal.flatMap(FedAnimal::of);
        }
        if (body.oneOf("animal", animals).isPresent()) {
            body.fault("animal", "animal is for as: feed alone");
        }
        return Optional.empty();
    }

    private Optional<Side> product(Use use, SideReading sides) {
        Optional<Side> product = sides.one(body, "product", "system");
        product.ifPresent(side -> {
            body.resolve("product", side.written());
            use.obstacleToSupply(side.product())
                    .ifPresent(why -> body.fault(SideReading.field(side, "product", "system"), why));
        });
        return product;
    }

    private boolean checkCurrency(Prices prices, Optional<Baseline> baseline) {
        boolean priced = prices.product().isPresent()
                || prices.cost().isPresent()
                || baseline.stream()
                        .flatMap(found -> found.parts().stream())
                        .anyMatch(part -> part.price().isPresent());
        if (prices.currency().isEmpty() && priced && !body.has("currency")) {
            body.fault("currency", "currency is missing: prices need one, as three capital letters such as KES");
        } else if (!prices.currency().isEmpty() && !prices.currency().matches("[A-Z]{3}")) {
            body.fault("currency", "currency must be three capital letters such as KES, and one alone");
        }
        if (!prices.currency().isEmpty()) {
            body.resolve("currency", prices.currency());
        }
        return priced;
    }

    private EqualBasis basis(Use use) {
        List<String> bases = EqualBasis.of(use).stream().map(EqualBasis::id).toList();
        EqualBasis equalBasis = body.oneOf("on", bases).flatMap(EqualBasis::of).orElse(EqualBasis.PROTEIN);
        body.resolve("on", equalBasis.id());
        return equalBasis;
    }

    private static List<Side> displaced(Optional<Baseline> baseline) {
        return baseline.stream()
                .flatMap(found -> found.parts().stream())
                .map(Baseline.BaselinePart::side)
                .toList();
    }

    /** Other products that might be displaced, without those that are on one of the sides already. */
    private List<Side> alternatives(Use use, Stream<Side> asked) {
        List<ProductForm> named = new ProductReading(library, body).any("alternatives", Limits.ALTERNATIVES);
        List<ProductForm> products = body.has("alternatives") ? named : usualAlternatives(use);
        List<String> onASide = asked.map(Side::written).toList();
        List<Side> sides = products.stream()
                .filter(other -> mayBeDisplaced(use, other))
                .filter(other -> !onASide.contains(other.written()))
                .<Side>map(Side.PublishedSide::new)
                .toList();
        if (!body.has("alternatives") || !named.isEmpty()) {
            body.resolve("alternatives", sides.stream().map(Side::written).toList());
        }
        return sides;
    }

    private List<ProductForm> usualAlternatives(Use use) {
        return use.usualAlternatives().stream()
                .map(id -> Objects.requireNonNull(library.products().get(id)))
                .map(product -> new ProductForm(product, product.defaultForm()))
                .toList();
    }

    private boolean mayBeDisplaced(Use use, ProductForm other) {
        boolean may = use.obstacleToDisplacement(other.product()).isEmpty();
        if (!may) {
            body.fault("alternatives", other.written() + " is not displaced by what is used as " + use.id());
        }
        return may;
    }

    private List<Indicator> indicators() {
        List<String> known = SubstitutionQuestion.INDICATORS;
        List<String> asked = body.texts("indicators", known.size());
        asked.stream()
                .filter(name -> !known.contains(name))
                .forEach(name -> body.unknown("indicators", name, known, Nearest.to(name, known, 2)));
        List<String> understood =
                asked.stream().filter(known::contains).distinct().toList();
        List<String> indicators = understood.isEmpty() ? SubstitutionQuestion.USUAL_INDICATORS : understood;
        body.resolve("indicators", indicators);
        return indicators.stream()
                .map(id -> Objects.requireNonNull(library.indicators().get(id)))
                .toList();
    }
}

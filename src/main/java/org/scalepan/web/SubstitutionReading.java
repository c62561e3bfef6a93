package org.scalepan.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.scalepan.ask.Baseline;
import org.scalepan.ask.EqualBasis;
import org.scalepan.ask.FedAnimal;
import org.scalepan.ask.Prices;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Programme;
import org.scalepan.ask.Ruler;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Shares;
import org.scalepan.ask.Side;
import org.scalepan.ask.Substitution;
import org.scalepan.ask.SubstitutionQuestion;
import org.scalepan.ask.Use;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.footprint.FunctionalUnit;

/** Reads what a programme brings, what it displaces and at what rate, out of a body. */
final class SubstitutionReading {
    private static final int MOST_PARTS = 10;
    private static final int MOST_ALTERNATIVES = 10;
    private static final double LEAST = 1e-6;
    private static final double MOST = 1e12;
    private static final double MOST_YEARS = 100;

    private final Library library;
    private final Body body;
    private final Map<String, Object> resolved = new LinkedHashMap<>();

    SubstitutionReading(Library library, Body body) {
        this.library = library;
        this.body = body;
    }

    /** The question as read, all defaults shown. */
    Map<String, Object> resolved() {
        return resolved;
    }

    /** The question; whatever is wrong with it is refused at once. */
    SubstitutionQuestion question() {
        Use use = body.oneOf("as", List.of(Use.FOOD.id(), Use.FEED.id()))
                        .filter(Use.FEED.id()::equals)
                        .isPresent()
                ? Use.FEED
                : Use.FOOD;
        resolved.put("as", use.id());
        Optional<FedAnimal> animal = animal(use);
        boolean credit = SideReading.credit(body);
        SideReading sides = new SideReading(library, credit);
        Optional<Side> product = sides.one(body, "product", "system");
        product.ifPresent(side -> {
            resolved.put("product", side.written());
            use.obstacleToSupply(side.product()).ifPresent(why -> body.fault(field(side), why));
        });
        Optional<Programme> programme = programme(use);
        Optional<String> currency = body.text("currency");
        Prices prices = new Prices(currency.orElse(""), number("price_per_kg", 0), number("cost_per_year", 0));
        Optional<Baseline> baseline = baseline(use, sides, currency);
        boolean priced = checkCurrency(prices, baseline);
        OptionalDouble rate = OptionalDouble.of(body.needNumber("displacement_rate", 0, 1));
        resolved.put("displacement_rate", rate.getAsDouble());
        EqualBasis basis = basis(use);
        List<Side> alternatives = alternatives(use, product, baseline);
        boolean recorded = product.filter(Side.Recorded.class::isInstance).isPresent()
                || baseline.stream()
                        .flatMap(found -> found.parts().stream())
                        .anyMatch(part -> part.side() instanceof Side.Recorded);
        Parameters scalars = BodyScalars.counting(
                body, Boundary.ids(SubstitutionQuestion.boundaries(recorded)), basis.counted());
        List<Ruler> rulers = rulers(use, scalars, recorded);
        RulerReading reading = new RulerReading(library, scalars);
        Sampling sampling = reading.sampling();
        int standings = 1 + baseline.map(found -> found.parts().size()).orElse(1) + alternatives.size();
        reading.afford(sampling, standings * rulers.size());
        BodyScalars.returnFaults(scalars, body);
        body.close();
        body.refuseIfWrong();
        resolved.put("credit", credit ? "yes" : "no");
        scalars.unresolve("per");
        resolved.putAll(scalars.resolved());
        SubstitutionQuestion question = new SubstitutionQuestion(
                use,
                animal,
                product.orElseThrow(),
                programme.orElseThrow(),
                baseline.orElseThrow(),
                rate.getAsDouble(),
                basis,
                rulers,
                alternatives,
                priced ? Optional.of(prices) : Optional.empty(),
                sampling);
        question.obstacles(library).forEach(body::fault);
        body.refuseIfWrong();
        return question;
    }

    private Optional<FedAnimal> animal(Use use) {
        List<String> animals =
                List.of(FedAnimal.values()).stream().map(FedAnimal::id).toList();
        if (use == Use.FEED) {
            Optional<String> animal = body.needOneOf("animal", animals);
            animal.ifPresent(id -> resolved.put("animal", id));
            return animal.flatMap(FedAnimal::of);
        }
        if (body.oneOf("animal", animals).isPresent()) {
            body.fault("animal", "animal is for as: feed alone");
        }
        return Optional.empty();
    }

    /** The field that a side was given in. */
    private static String field(Side side) {
        return side instanceof Side.Recorded ? "system" : "product";
    }

    private Optional<Programme> programme(Use use) {
        boolean byMass = body.has("kg_per_year");
        OptionalDouble kilograms = number("kg_per_year", LEAST);
        if (use == Use.FEED) {
            boolean byDiet = body.has("inclusion_percent");
            OptionalDouble percent = body.number("inclusion_percent", LEAST, 100);
            OptionalDouble feed = number("feed_kg_per_year", LEAST);
            if (byMass == byDiet || byDiet != feed.isPresent()) {
                body.fault(
                        byMass ? "inclusion_percent" : "kg_per_year",
                        "give either kg_per_year of the insect meal, or inclusion_percent of the diet with"
                                + " feed_kg_per_year, the kg of the whole diet fed in a year");
                return Optional.empty();
            }
            if (byDiet && percent.isPresent()) {
                resolved.put("inclusion_percent", percent.getAsDouble());
                kilograms = OptionalDouble.of(Programme.inDiet(feed.getAsDouble(), percent.getAsDouble()));
            }
        } else if (!byMass) {
            body.fault("kg_per_year", "kg_per_year is missing: how much of the product a year brings");
        }
        List<String> units =
                Substitution.units().stream().map(FunctionalUnit::id).toList();
        FunctionalUnit unit = unit(body, units);
        if (use == Use.FEED && body.has("inclusion_percent") && unit != FunctionalUnit.KG_PRODUCT) {
            body.fault("unit", "unit must be kg-product with inclusion_percent: a diet is mixed of feed as it comes");
        }
        resolved.put("unit", unit.id());
        OptionalDouble years = body.number("years", 1, MOST_YEARS);
        years.ifPresent(value -> resolved.put("years", value));
        OptionalDouble households = number("households", 1);
        OptionalDouble women = number("women", 0);
        OptionalDouble men = number("men", 0);
        OptionalDouble beneficiaries = beneficiaries(women, men);
        OptionalDouble meals = meals(kilograms);
        return kilograms.isPresent()
                ? Optional.of(new Programme(
                        kilograms.getAsDouble(), unit, years, households, beneficiaries, women, men, meals))
                : Optional.empty();
    }

    private static FunctionalUnit unit(Body from, List<String> units) {
        return from.oneOf("unit", units).flatMap(FunctionalUnit::of).orElse(FunctionalUnit.KG_PRODUCT);
    }

    private OptionalDouble beneficiaries(OptionalDouble women, OptionalDouble men) {
        OptionalDouble all = number("beneficiaries", 1);
        Programme.obstacleInBeneficiaries(all, women, men).ifPresent(body::fault);
        return Programme.beneficiaries(all, women, men);
    }

    private OptionalDouble meals(OptionalDouble kilograms) {
        OptionalDouble meals = number("meals_per_year", 1);
        OptionalDouble grams = body.number("grams_per_meal", LEAST, MOST);
        if (meals.isPresent() && grams.isPresent()) {
            body.fault("grams_per_meal", "give either meals_per_year or grams_per_meal, not both");
        }
        if (grams.isEmpty() || kilograms.isEmpty()) {
            return meals;
        }
        resolved.put("grams_per_meal", grams.getAsDouble());
        return OptionalDouble.of(Programme.meals(kilograms.getAsDouble(), grams.getAsDouble()));
    }

    private Optional<Baseline> baseline(Use use, SideReading sides, Optional<String> currency) {
        List<Body> entries = body.objects("baseline", MOST_PARTS);
        if (entries.isEmpty() && !body.has("baseline")) {
            body.fault(
                    "baseline", "baseline is missing: what is displaced, as a list of products or systems with shares");
            return Optional.empty();
        }
        if (entries.isEmpty()) {
            body.fault("baseline", "baseline must name at least one product or system");
            return Optional.empty();
        }
        List<Optional<Side>> read = new ArrayList<>();
        List<OptionalDouble> given = new ArrayList<>();
        List<FunctionalUnit> units = new ArrayList<>();
        List<OptionalDouble> prices = new ArrayList<>();
        List<OptionalDouble> imports = new ArrayList<>();
        List<String> allowed =
                Substitution.units().stream().map(FunctionalUnit::id).toList();
        for (Body entry : entries) {
            Optional<Side> side = sides.one(entry, "product", "system");
            side.ifPresent(found -> use.obstacleToDisplacement(found.product())
                    .ifPresent(why -> entry.fault(field(found), why)));
            read.add(side);
            given.add(entry.number("share", 0, 1));
            units.add(unit(entry, allowed));
            OptionalDouble price = entry.number("price_per_kg", 0, MOST);
            OptionalDouble imported = entry.number("imported_share", 0, 1);
            if (imported.isPresent() && !entry.has("price_per_kg")) {
                entry.fault(
                        "price_per_kg", "price_per_kg is missing: imported_share is of the value of what is displaced");
            }
            oneCurrency(entry, currency);
            prices.add(price);
            imports.add(imported);
            entry.close();
        }
        Optional<List<Double>> shares = Shares.of(given);
        if (shares.isEmpty()) {
            body.fault("baseline", "the shares of baseline must add to 1; one entry may leave its share out");
        }
        if (shares.isEmpty() || read.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        List<Baseline.Part> parts = new ArrayList<>();
        for (int i = 0; i < read.size(); i++) {
            parts.add(new Baseline.Part(
                    read.get(i).orElseThrow(), shares.get().get(i), units.get(i), prices.get(i), imports.get(i)));
        }
        resolved.put(
                "baseline",
                parts.stream()
                        .map(part -> part.side().written() + " " + Numbers.plain(part.share()))
                        .toList());
        return Optional.of(new Baseline(parts));
    }

    /** Prices in two currencies would have to be converted, which nothing here does. */
    private static void oneCurrency(Body entry, Optional<String> all) {
        Optional<String> own = entry.text("currency");
        if (own.isPresent() && !own.equals(all)) {
            entry.fault("currency", "all prices must be in one currency; nothing is converted");
        }
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
            resolved.put("currency", prices.currency());
        }
        return priced;
    }

    private EqualBasis basis(Use use) {
        List<String> bases = EqualBasis.of(use).stream().map(EqualBasis::id).toList();
        EqualBasis basis = body.oneOf("on", bases).flatMap(EqualBasis::of).orElse(EqualBasis.PROTEIN);
        resolved.put("on", basis.id());
        return basis;
    }

    private List<Side> alternatives(Use use, Optional<Side> product, Optional<Baseline> baseline) {
        List<String> asked = body.texts("alternatives", MOST_ALTERNATIVES);
        if (asked.isEmpty() && body.has("alternatives")) {
            return List.of();
        }
        List<String> names = asked.isEmpty() ? use.usualAlternatives() : asked;
        Parameters parameters = new Parameters(Map.of("alternatives", String.join(",", names)));
        List<ProductForm> products = new ProductReading(library, parameters).some("alternatives", MOST_ALTERNATIVES);
        parameters.errors().forEach(body::unknownScalar);
        List<String> displaced = Stream.concat(
                        product.stream(),
                        baseline.stream()
                                .flatMap(found -> found.parts().stream())
                                .map(Baseline.Part::side))
                .map(Side::written)
                .toList();
        List<Side> sides = new ArrayList<>();
        for (ProductForm other : products) {
            if (use.obstacleToDisplacement(other.product()).isPresent()) {
                body.fault("alternatives", other.written() + " is not displaced by what is used as " + use.id());
            } else if (!displaced.contains(other.written())) {
                sides.add(new Side.Published(other));
            }
        }
        resolved.put("alternatives", sides.stream().map(Side::written).toList());
        return sides;
    }

    private List<Ruler> rulers(Use use, Parameters scalars, boolean recorded) {
        List<String> asked = body.texts("indicators", SubstitutionQuestion.INDICATORS.size());
        List<String> known = SubstitutionQuestion.INDICATORS;
        asked.stream()
                .filter(name -> !known.contains(name))
                .forEach(name -> body.unknown("indicators", name, known, Nearest.to(name, known, 2)));
        List<String> understood = asked.stream().filter(known::contains).distinct().toList();
        List<String> indicators = understood.isEmpty() ? SubstitutionQuestion.USUAL_INDICATORS : understood;
        resolved.put("indicators", indicators);
        List<Ruler> rulers = new ArrayList<>();
        for (String id : indicators) {
            Ruler ruler = new RulerReading(library, scalars)
                    .ruler(Objects.requireNonNull(library.indicators().get(id)));
            Optional<Boundary> boundary = scalars.raw("boundary").map(given -> ruler.boundary());
            rulers.add(ruler.endingAt(use.boundary(ruler.indicator(), boundary, recorded)));
        }
        if (scalars.raw("boundary").isEmpty()) {
            scalars.unresolve("boundary");
        }
        return rulers;
    }

    private OptionalDouble number(String field, double least) {
        OptionalDouble value = body.number(field, least, MOST);
        value.ifPresent(number -> resolved.put(field, number));
        return value;
    }
}

package org.scalepan.production.herd;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.footprint.UnitChain;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.Gap;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.Output;
import org.scalepan.production.TermFactor;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/** What a herd yields, and which part of the burden is allocated to the product asked about. */
public final class HerdOutput {
    /** What a category gives when it is slaughtered, and what it is milked or laid for. */
    private static final Map<String, String> MEAT = Map.of(
            "dairy-cattle", "beef",
            "other-cattle", "beef",
            "buffalo", "buffalo-meat",
            "sheep", "lamb",
            "goats", "goat-meat",
            "swine", "pork",
            "layers", "chicken",
            "broilers", "chicken",
            "ducks", "duck");

    /** Milk of sheep is not among the products, and that of another species is no substitute. */
    private static final Map<String, String> MILK =
            Map.of("dairy-cattle", "milk", "other-cattle", "milk", "buffalo", "buffalo-milk", "goats", "goat-milk");

    private final Library library;
    private final Herd herd;
    private final InventoryBuilder builder;

    HerdOutput(Library library, Herd herd, InventoryBuilder builder) {
        this.library = library;
        this.herd = herd;
        this.builder = builder;
    }

    /** The product that a kind of animal gives, when it gives any that the library knows. */
    public static Optional<String> product(String category, Herd.AnimalKind kind) {
        return switch (kind) {
            case MILK -> Optional.ofNullable(MILK.get(category));
            case EGGS -> HerdInventory.POULTRY.contains(category) ? Optional.of("egg") : Optional.empty();
            case LIVE -> Optional.ofNullable(MEAT.get(category));
        };
    }

    /** The product asked about, and its part of the burden by protein when the herd gives more than one. */
    Output output() {
        List<OutputPart> parts = herd.yields().stream().map(this::part).toList();
        OutputPart main = herd.product()
                .flatMap(id -> parts.stream()
                        .filter(part -> part.product().id().equals(id))
                        .findFirst())
                .orElseGet(() -> parts.stream().max(HerdOutput::byProtein).orElseThrow());
        boolean byProtein = parts.stream().allMatch(part -> part.protein().central() > 0);
        ActivityTerm share = parts.size() == 1
                ? ActivityTerm.of(1)
                : ActivityTerm.derived(
                        new PartOfYield(parts.indexOf(main)),
                        parts.stream().map(part -> part.weight(byProtein)).toList());
        notGiven();
        if (parts.size() > 1) {
            if (herd.product().isEmpty()) {
                builder.filled(
                        "product",
                        Gap.ALL,
                        Message.of("gap.most-protein", "product", main.product().id()));
            }
            builder.filled(
                    "allocation",
                    Gap.ALL,
                    Message.of(
                            byProtein ? "gap.allocation.protein" : "gap.allocation.mass",
                            "percent",
                            new Figure(String.format(Locale.ROOT, "%.0f", 100 * share.central())),
                            "product",
                            main.product().id()));
        }
        return new Output(
                main.product(),
                main.product().defaultForm(),
                main.unit(),
                main.kilograms(),
                share,
                parts.size() == 1 ? "none" : byProtein ? "protein" : "mass");
    }

    private static int byProtein(OutputPart one, OutputPart other) {
        return Double.compare(one.protein().central(), other.protein().central());
    }

    /** What such animals usually give and these do not, so that no burden is allocated to it. */
    private void notGiven() {
        for (Herd.AnimalKind kind : Herd.AnimalKind.values()) {
            boolean given = herd.yields().stream().anyMatch(yield -> yield.kind() == kind);
            if (!given && product(herd.category(), kind).isPresent()) {
                builder.filled(
                        "yield/" + kind.name().toLowerCase(Locale.ROOT) + "_kg", Gap.ALL, Message.of("gap.no-part"));
            }
        }
    }

    private record PartOfYield(int place) implements TermFactor.RecordFormula {
        @Override
        public double of(double[] inputs) {
            return inputs[place] / DoubleStream.of(inputs).sum();
        }
    }

    private record OutputPart(Product product, FunctionalUnit unit, ActivityTerm kilograms, ActivityTerm protein) {
        ActivityTerm weight(boolean byProtein) {
            return byProtein ? protein : kilograms;
        }
    }

    private OutputPart part(Herd.Yield yield) {
        String id = product(herd.category(), yield.kind())
                .orElseThrow(() -> new IllegalArgumentException(herd.category() + " give no "
                        + yield.kind().name().toLowerCase(Locale.ROOT) + " that is a product of this library"));
        if (yield.kind() == Herd.AnimalKind.EGGS && herd.category().equals("ducks")) {
            builder.filled("yield/eggs_kg", Gap.ALL, Message.of("gap.duck-eggs"));
        }
        Product product = java.util.Objects.requireNonNull(library.products().get(id));
        FunctionalUnit unit = yield.kind() == Herd.AnimalKind.LIVE ? FunctionalUnit.KG_LIVE : FunctionalUnit.KG_PRODUCT;
        ActivityTerm kilograms = yield.kilograms().term();
        return new OutputPart(product, unit, kilograms, kilograms.times(proteinShare(product, unit)));
    }

    private double proteinShare(Product product, FunctionalUnit unit) {
        UnitChain chain =
                UnitChain.of(library, product, product.defaultForm(), "", ProteinBasis.CRUDE, true, Grade.MEMORY);
        ChainPath path = chain.path(unit, FunctionalUnit.KG_PROTEIN);
        if (path instanceof ChainPath.FoundPath found) {
            double share = 1;
            for (ChainStep step : found.steps()) {
                share /= step.multiplier();
            }
            return share;
        }
        return 0;
    }
}

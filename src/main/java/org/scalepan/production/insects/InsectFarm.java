package org.scalepan.production.insects;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Product;
import org.scalepan.input.Obstacle;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.StatedComposition;
import org.scalepan.production.heating.Heating;

/**
 * The records of an insect farm; only feed, harvest and energy are required, the rest may be open.
 *
 * @param form form sold; fresh when absent; another form than that needs {@code sold}
 * @param sold kg a year as sold, when that is not the live harvest
 * @param price of a kg sold, in the currency of the co-products' prices; for economic allocation
 * @param cycleDays days from hatching or stocking to harvest
 * @param pairs breeding pairs stocked per container
 * @param keptForBreeding share of the harvest retained, 0 to below 1
 * @param mortality share of the animals that die before harvest, 0 to below 1
 * @param heating a heated room whose heat no meter has; empty where there is none or energy has it
 * @param composition what the farm states that its harvested animals hold
 */
@RecordBuilder
public record InsectFarm(
        FarmRecords records,
        Product product,
        Optional<String> form,
        Harvest harvest,
        Optional<RecordedNumber> sold,
        Optional<RecordedNumber> price,
        Optional<RecordedNumber> cycleDays,
        Optional<RecordedNumber> pairs,
        Optional<RecordedNumber> keptForBreeding,
        Optional<RecordedNumber> mortality,
        Optional<Frass> frass,
        List<Processing> processing,
        Optional<CoProductRule> coProductRule,
        Optional<Heating> heating,
        StatedComposition composition)
        implements InsectFarmBuilder.With {
    public InsectFarm {
        processing = List.copyOf(processing);
    }

    /** A farm without a room to heat, or with a meter for it, that states nothing of what its animals hold. */
    public InsectFarm(
            FarmRecords records,
            Product product,
            Optional<String> form,
            Harvest harvest,
            Optional<RecordedNumber> sold,
            Optional<RecordedNumber> price,
            Optional<RecordedNumber> cycleDays,
            Optional<RecordedNumber> pairs,
            Optional<RecordedNumber> keptForBreeding,
            Optional<RecordedNumber> mortality,
            Optional<Frass> frass,
            List<Processing> processing,
            Optional<CoProductRule> coProductRule) {
        this(
                records,
                product,
                form,
                harvest,
                sold,
                price,
                cycleDays,
                pairs,
                keptForBreeding,
                mortality,
                frass,
                processing,
                coProductRule,
                Optional.empty(),
                StatedComposition.NONE);
    }

    /** The fate of the frass. */
    public enum Fate {
        /** Kept on the farm. */
        STORED,
        /** Applied to a field. */
        SPREAD
    }

    /**
     * What is left in the containers.
     *
     * @param kilograms a year, as it is
     * @param nitrogen share of N in it; from the mass balance of feed and larvae when absent
     * @param fate stored when absent
     * @param credited whether it replaces bought nitrogen fertiliser: shown beside the figure, and taken off only when asked
     */
    public record Frass(
            Optional<RecordedNumber> kilograms,
            Optional<RecordedNumber> nitrogen,
            Optional<Fate> fate,
            boolean credited) {}

    /**
     * A processing step beyond the farm gate.
     *
     * @param step a process of the library: drying, blanching, freezing
     * @param water kg of water removed, heated or frozen a year
     * @param carrier energy carrier of its heat
     * @param energy kWh of delivered energy per kg of water, when the grower measured it; the library's otherwise
     */
    public record Processing(String step, RecordedNumber water, String carrier, Optional<RecordedNumber> energy) {}

    /** How the burden is allocated between product and co-products. */
    public enum CoProductRule {
        NONE,
        MASS,
        ECONOMIC;

        /** Why the burden cannot be allocated so; economic allocation needs a price for every product. */
        public Optional<Obstacle> obstacle(Optional<RecordedNumber> price, List<FarmRecords.CoProduct> coProducts) {
            boolean priced = RecordedNumber.centralOr(price, 0) > 0
                    && coProducts.stream().allMatch(given -> given.price().isPresent());
            return this != ECONOMIC || priced
                    ? Optional.empty()
                    : Optional.of(
                            new Obstacle(
                                    "co_product_allocation",
                                    "economic allocation needs price_per_kg of the product, above zero, and of every co-product"));
        }
    }
}

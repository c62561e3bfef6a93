package org.scalepan.production;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A farm's records of a year apart from the animals: the same fields for insect farms and herds.
 *
 * @param region region id of the farm, for the electricity grid
 * @param year year of the records, for the electricity grid
 * @param water m3 a year
 * @param buildingArea m2 under roof
 * @param yardArea m2 of yard or run
 * @param gridIntensity kg CO2e per kWh of the grid, as the grower's supplier tells it; the library's when absent
 * @param none which of {@link #LISTS} were given empty: a record of none, not a gap
 */
@RecordBuilder
public record FarmRecords(
        String name,
        Optional<String> region,
        OptionalInt year,
        List<FeedUse> feed,
        List<EnergyUse> energy,
        Optional<RecordedNumber> water,
        List<TransportUse> transport,
        List<MaterialUse> materials,
        Optional<RecordedNumber> buildingArea,
        Optional<RecordedNumber> yardArea,
        List<CoProduct> coProducts,
        Optional<RecordedNumber> gridIntensity,
        Set<String> none)
        implements FarmRecordsBuilder.With {
    /** The lists of records that may say that there was none. */
    public static final List<String> LISTS = List.of("feed", "energy", "transport", "materials");

    /** Records in which an empty list says that nothing was written down. */
    public FarmRecords(
            String name,
            Optional<String> region,
            OptionalInt year,
            List<FeedUse> feed,
            List<EnergyUse> energy,
            Optional<RecordedNumber> water,
            List<TransportUse> transport,
            List<MaterialUse> materials,
            Optional<RecordedNumber> buildingArea,
            Optional<RecordedNumber> yardArea,
            List<CoProduct> coProducts,
            Optional<RecordedNumber> gridIntensity) {
        this(
                name,
                region,
                year,
                feed,
                energy,
                water,
                transport,
                materials,
                buildingArea,
                yardArea,
                coProducts,
                gridIntensity,
                Set.of());
    }

    public FarmRecords {
        none = Set.copyOf(none);
        feed = List.copyOf(feed);
        energy = List.copyOf(energy);
        transport = List.copyOf(transport);
        materials = List.copyOf(materials);
        coProducts = List.copyOf(coProducts);
    }

    /** How the burden of a residue or by-product is allocated to it. */
    public enum Burden {
        /** Its share of the crop's burden by price. */
        ECONOMIC("economic"),
        /** Its share of the crop's burden by mass. */
        MASS("mass"),
        /** None: a method choice, not evidence that there is none. */
        BURDEN_FREE("burden-free"),
        /** The burden of what must replace it where it was used before. */
        DISPLACED("displaced");

        private final String id;

        Burden(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }

        public static Optional<Burden> of(String id) {
            return java.util.stream.Stream.of(values())
                    .filter(burden -> burden.id.equals(id))
                    .findFirst();
        }
    }

    /**
     * Feed of one kind.
     *
     * @param kilograms as fed, a year
     * @param ingredient an id of the library, or a name that the records give and no id has
     * @param moisture share of water, 0 to below 1
     * @param nitrogen kg N per kg dry matter
     * @param displaces what has to be used instead where this was used before: counted with {@link Burden#DISPLACED}, and shown beside
     *     the figure with {@link Burden#BURDEN_FREE}
     * @param displacedPerKilogram kg of that per kg of this
     * @param own the grower's own factors, which win over the library's
     */
    public record FeedUse(
            String ingredient,
            RecordedNumber kilograms,
            Optional<RecordedNumber> moisture,
            Optional<RecordedNumber> nitrogen,
            Optional<Burden> burden,
            Optional<String> displaces,
            Optional<RecordedNumber> displacedPerKilogram,
            OwnFactors own) {
        /** Feed of which the grower knows no nitrogen. */
        public FeedUse(
                String ingredient,
                RecordedNumber kilograms,
                Optional<RecordedNumber> moisture,
                Optional<Burden> burden,
                Optional<String> displaces,
                Optional<RecordedNumber> displacedPerKilogram,
                OwnFactors own) {
            this(ingredient, kilograms, moisture, Optional.empty(), burden, displaces, displacedPerKilogram, own);
        }
    }

    /** The grower's own factors per kg as fed: kg CO2e, m2·yr, MJ, m3. */
    public record OwnFactors(
            Optional<RecordedNumber> ghg,
            Optional<RecordedNumber> land,
            Optional<RecordedNumber> energy,
            Optional<RecordedNumber> water) {
        public static final OwnFactors NONE =
                new OwnFactors(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Energy of one carrier.
     *
     * @param amount a year, in the carrier's own unit: kWh, kg or litre
     * @param site where it is used; on the farm when absent
     */
    public record EnergyUse(String carrier, RecordedNumber amount, Optional<Site> site) {
        public EnergyUse(String carrier, double amount, boolean forProcessing) {
            this(carrier, RecordedNumber.of(amount), Optional.of(forProcessing ? Site.PROCESSING : Site.FARM));
        }

        /** True for energy used beyond the farm gate. */
        public boolean forProcessing() {
            return site.filter(Site.PROCESSING::equals).isPresent();
        }
    }

    /** Where energy is used. */
    public enum Site {
        FARM,
        PROCESSING
    }

    /** Transport: tonnes times kilometres a year. */
    public record TransportUse(String mode, RecordedNumber tonneKilometres) {}

    /** Material with a service life: its mass and how many years it lasts, 1 when absent. */
    public record MaterialUse(String material, RecordedNumber kilograms, Optional<RecordedNumber> years) {}

    /**
     * A co-product, to which part of the burden may be allocated.
     *
     * @param price per kg, in any one currency
     */
    public record CoProduct(String name, RecordedNumber kilograms, Optional<RecordedNumber> price) {}
}

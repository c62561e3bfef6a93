package org.scalepan.production;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.scalepan.factors.IpccRow;
import org.scalepan.factors.Library;
import org.scalepan.uncertainty.CappedFraction;
import org.scalepan.uncertainty.Constant;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.Lognormal;
import org.scalepan.uncertainty.SplitNormal;

/**
 * The IPCC tables of one edition (volume 4, chapters 10 and 11). A look-up starts at the narrowest term and goes outwards: layers →
 * chickens → poultry → all animals; Africa → other regions → developing countries → all regions. Editions are never mixed, because a table of this class
 * sees one only.
 */
public final class IpccTables {
    private static final String MEAN = "mean";
    private static final String ALL_REGIONS = "ipcc.all-regions";
    private static final List<String> HIGH_PRODUCTIVITY =
            List.of("ipcc.north-america", "ipcc.western-europe", "ipcc.eastern-europe", "ipcc.oceania");

    private final Library library;
    private final String edition;
    private final Map<String, List<IpccRow>> defaults;
    private final Map<String, List<IpccRow>> uncertainties;
    private final Map<String, Optional<String>> broader = new HashMap<>();
    private final Map<String, Factor> factors = new ConcurrentHashMap<>();
    private final Map<List<String>, Optional<Factor>> soilFactors = new ConcurrentHashMap<>();
    private final Map<List<String>, Optional<Factor>> aboutOne = new ConcurrentHashMap<>();
    private final Map<List<String>, Optional<String>> groups = new ConcurrentHashMap<>();
    /** Rows of a bulk run look up the same few places again and again. */
    private final Cache<Wanted, Optional<IpccRow>> found =
            Caffeine.newBuilder().maximumSize(10_000).executor(Runnable::run).build();

    private record Wanted(String quantity, Where where) {}

    /** The tables of each edition that has been used, by library. */
    private record IpccIndex(Map<String, IpccTables> editions) {}

    private IpccTables(Library library, String edition) {
        this.library = library;
        this.edition = edition;
        this.defaults = library.ipcc().stream()
                .filter(row -> row.edition().equals(edition) && row.isDefault())
                .collect(Collectors.groupingBy(IpccRow::quantity));
        this.uncertainties = library.ipcc().stream()
                .filter(row -> row.quantity().startsWith("uncertainty-")
                        && row.isDefault()
                        && row.edition().compareTo(edition) <= 0)
                .collect(Collectors.groupingBy(IpccRow::quantity));
        library.table("ipcc_terms").rows().forEach(row -> broader.put(row.text("id"), row.optional("broader")));
    }

    /**
     * The tables of one edition, indexed once.
     *
     * @param edition 2006 or 2019
     */
    public static IpccTables of(Library library, String edition) {
        return library.view(IpccIndex.class, unused -> new IpccIndex(new ConcurrentHashMap<>()))
                .editions()
                .computeIfAbsent(edition, year -> new IpccTables(library, year));
    }

    public String edition() {
        return edition;
    }

    /**
     * What is looked up.
     *
     * @param development developed or developing countries, by which many tables of 2006 distinguish; empty when it is not known
     * @param condition a table's further condition, such as the milk yield of Ym; empty for none
     */
    public record Where(
            String category,
            String productivity,
            String region,
            Optional<String> development,
            String climate,
            String system,
            Optional<String> condition) {
        public static Where of(String category) {
            return new Where(
                    category, MEAN, ALL_REGIONS, Optional.empty(), "any-climate", "mms.any-system", Optional.empty());
        }

        public Where in(String otherRegion, String otherProductivity) {
            return new Where(category, otherProductivity, otherRegion, development, climate, system, condition);
        }

        public Where developed(Optional<String> group) {
            return new Where(category, productivity, region, group, climate, system, condition);
        }

        public Where manure(String otherSystem, String otherClimate) {
            return new Where(category, productivity, region, development, otherClimate, otherSystem, condition);
        }

        public Where given(String otherCondition) {
            return new Where(category, productivity, region, development, climate, system, Optional.of(otherCondition));
        }
    }

    /** The row that fits best. */
    public Optional<IpccRow> find(String quantity, Where where) {
        return found.get(new Wanted(quantity, where), wanted -> search(wanted.quantity, wanted.where));
    }

    private Optional<IpccRow> search(String quantity, Where where) {
        List<String> categories = outwards(where.category());
        List<String> regions = regions(where);
        List<String> climates = outwards(where.climate());
        List<String> systems = outwards(where.system());
        List<String> productivities = productivities(where);
        return defaults.getOrDefault(quantity, List.of()).stream()
                .filter(row -> row.condition().equals(where.condition())
                        && categories.contains(row.category())
                        && regions.contains(row.region())
                        && climates.contains(row.climate())
                        && systems.contains(row.system())
                        && productivities.contains(row.productivity()))
                .min(Comparator.<IpccRow>comparingInt(row -> systems.indexOf(row.system()))
                        .thenComparingInt(row -> categories.indexOf(row.category()))
                        .thenComparingInt(row -> regions.indexOf(row.region()))
                        .thenComparingInt(row -> productivities.indexOf(row.productivity()))
                        .thenComparingInt(row -> climates.indexOf(row.climate())));
    }

    /** Where a table gives high and low productivity only, its regions say which one is meant. */
    private static List<String> productivities(Where where) {
        if (!where.productivity().equals(MEAN)) {
            return List.of(where.productivity(), MEAN);
        }
        return List.of(MEAN, HIGH_PRODUCTIVITY.contains(where.region()) ? "high" : "low");
    }

    /** The region and what includes it, then its group by development, and last all regions. */
    private List<String> regions(Where where) {
        List<String> chain = outwards(where.region());
        where.development().ifPresent(group -> {
            chain.remove(ALL_REGIONS);
            chain.add(group);
            chain.add(ALL_REGIONS);
        });
        return chain;
    }

    private List<String> outwards(String term) {
        List<String> chain = new ArrayList<>();
        Optional<String> at = Optional.of(term);
        while (at.isPresent() && !chain.contains(at.get())) {
            String id = at.get();
            chain.add(id);
            at = broader.getOrDefault(id, Optional.empty());
        }
        return chain;
    }

    /** A row read as a factor; a number alone has no spread here, because the method's own uncertainty goes on top. */
    public Factor factor(IpccRow row) {
        return factors.computeIfAbsent(
                row.id(),
                id -> new Factor(
                        id,
                        aboutDefault(
                                row.printed().value().orElseThrow(),
                                row.printed().low(),
                                row.printed().high(),
                                row.unit())));
    }

    /**
     * The uncertainty that the guidelines name for a step, as a factor about 1: half the 95 % interval as a share of the value, or its
     * ends where they are printed as multiples of it.
     *
     * @param quantity such as {@code uncertainty-enteric-tier1}; taken from 2006 where 2019 does not restate it, never the
     *     other way round
     */
    public Optional<Factor> uncertainty(String quantity, String drawnAs) {
        return aboutOne.computeIfAbsent(List.of(quantity, drawnAs), unused -> readUncertainty(quantity, drawnAs));
    }

    private Optional<Factor> readUncertainty(String quantity, String drawnAs) {
        return uncertainties.getOrDefault(quantity, List.of()).stream()
                .min(Comparator.comparing(row -> !row.edition().equals(edition)))
                .map(row -> new Factor(row.id() + "/" + drawnAs, about1(row), Optional.of(row.id())));
    }

    private static Distribution about1(IpccRow row) {
        if (row.unit().equals("ratio")) {
            return Lognormal.ofQuantiles(
                    0.025,
                    row.printed().low().orElseThrow(),
                    0.975,
                    row.printed().high().orElseThrow());
        }
        double half = row.printed().value().orElseThrow();
        double gsd = StrictMath.pow((1 + half) / (1 - half), 1 / 3.92);
        return Lognormal.ofMedianAndGsd(1, gsd);
    }

    /**
     * A factor of chapter 11, for the moisture of a climate where the table distinguishes it, else for any climate. Where there is a row
     * for wet climates only, such as leaching, it serves as long as nothing is known of the climate.
     *
     * @param climate a climate of the tables; {@code any-climate} when it is not known
     */
    public Factor soil(String quantity, String input, String climate) {
        Optional<Moisture> moisture = Moisture.of(climate);
        return moisture.flatMap(known -> soilRow(quantity, input, known.id()))
                .or(() -> moisture.flatMap(known -> soilRow(quantity, "all", known.id())))
                .or(() -> soilRow(quantity, input, "any-climate"))
                .or(() -> soilRow(quantity, "all", "any-climate"))
                .or(() -> soilRow(quantity, input, Moisture.WET.id()))
                .orElseThrow(() -> new IllegalStateException("no " + quantity + " for " + input + " in the library"));
    }

    private Optional<Factor> soilRow(String quantity, String input, String climate) {
        return soilFactors.computeIfAbsent(
                List.of(quantity, input, climate), unused -> readSoilRow(quantity, input, climate));
    }

    private Optional<Factor> readSoilRow(String quantity, String input, String climate) {
        return library.table("soil_n2o").rows().stream()
                .filter(row -> row.text("edition").equals(edition)
                        && row.text("quantity").equals(quantity)
                        && row.text("n_input").equals(input)
                        && row.text("climate").equals(climate)
                        && row.text("use").equals("default"))
                .findFirst()
                .map(row -> new Factor(
                        row.text("id"),
                        aboutDefault(
                                row.number("value").orElseThrow(),
                                row.number("low"),
                                row.number("high"),
                                row.text("unit"))));
    }

    /** The printed default in the middle of its printed limits, or alone; a share stays within 1. */
    private static Distribution aboutDefault(double value, OptionalDouble low, OptionalDouble high, String unit) {
        boolean spread = low.isPresent() && high.isPresent() && low.getAsDouble() < high.getAsDouble();
        if (!spread) {
            return new Constant(value);
        }
        SplitNormal about = new SplitNormal(low.getAsDouble(), value, high.getAsDouble());
        return unit.equals("fraction") ? new CappedFraction(about) : about;
    }

    /** The IPCC region of a place, by the nearest region around it that the table names. */
    public Optional<String> regionOf(String place) {
        return grouped(place, "geographic");
    }

    /** Whether the tables count a place among the developed or the developing countries. */
    public Optional<String> developmentOf(String place) {
        return grouped(place, "development");
    }

    /** The same for a region of the tables: only those of high productivity are counted as developed. */
    public static Optional<String> developmentOfRegion(String ipccRegion) {
        return Optional.of(
                HIGH_PRODUCTIVITY.contains(ipccRegion) ? "ipcc.developed-countries" : "ipcc.developing-countries");
    }

    private Optional<String> grouped(String place, String scheme) {
        return groups.computeIfAbsent(List.of(place, scheme), unused -> readGroup(place, scheme));
    }

    private Optional<String> readGroup(String place, String scheme) {
        for (String around : library.regions().outwards(place)) {
            Optional<String> found = library.table("ipcc_regions").rows().stream()
                    .filter(row -> row.text("edition").equals(edition)
                            && row.text("region").equals(around)
                            && row.text("scheme").equals(scheme))
                    .map(row -> row.text("ipcc_region"))
                    .findFirst();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}

package org.scalepan.production;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.factors.Regions;
import org.scalepan.factors.table.Row;
import org.scalepan.uncertainty.SpreadReading;
import org.scalepan.words.Message;

/** Finds the background factors of the library and reads each once, with its uncertainty. */
public final class Background {
    /** Economic before mass before unnamed allocation; a burden-free zero last, because it is a choice. */
    private static final List<String> ALLOCATIONS =
            List.of("economic", "mass", "not-stated", "system-expansion", "burden-free");

    private final Library library;
    private final Map<String, Map<About, List<BackgroundFactor>>> rows = new ConcurrentHashMap<>();
    private final Map<String, Map<About, BackgroundFactor>> defaults = new ConcurrentHashMap<>();
    private final Map<String, Map<About, List<BackgroundFactor>>> allocated = new ConcurrentHashMap<>();
    private final Map<String, Factor> factors = new ConcurrentHashMap<>();
    private final Map<String, Factor> fractions = new ConcurrentHashMap<>();
    private final Map<String, Message> moistures = new ConcurrentHashMap<>();
    private final Map<String, Map<String, Row>> yields = new HashMap<>();
    /** Rows of a bulk run ask for the same few places again and again. */
    private final Cache<Near, Optional<BackgroundFactor>> near =
            Caffeine.newBuilder().maximumSize(10_000).build();

    private record About(String subject, String quantity) {}

    private record Near(String table, About about, Optional<String> region, OptionalInt year) {}

    private Background(Library library) {
        this.library = library;
        for (Row row : library.table("crop_yields").rows()) {
            if (row.text("use").equals("default") && row.number("value").isPresent()) {
                row.optional("ingredient")
                        .ifPresent(ingredient -> yields.computeIfAbsent(ingredient, crop -> new HashMap<>())
                                .putIfAbsent(row.text("region"), row));
            }
        }
    }

    /** The yield of the crop that an ingredient is, in t/ha; the region itself before what contains it. */
    public Optional<Row> cropYield(String ingredient, Optional<String> region) {
        Map<String, Row> places = yields.getOrDefault(ingredient, Map.of());
        return library.regions().outwards(region.orElse(Regions.WORLD)).stream()
                .flatMap(place -> Optional.ofNullable(places.get(place)).stream())
                .findFirst();
    }

    public static Background of(Library library) {
        return library.view(Background.class, Background::new);
    }

    /** The default row about a subject and a quantity. */
    public Optional<BackgroundFactor> row(String table, String subject, String quantity) {
        return Optional.ofNullable(
                defaults.computeIfAbsent(table, this::firstDefaults).get(new About(subject, quantity)));
    }

    public List<BackgroundFactor> rows(String table, String subject, String quantity) {
        return rows.computeIfAbsent(table, this::index).getOrDefault(new About(subject, quantity), List.of());
    }

    /** All default rows about a subject and a quantity, by {@link #ALLOCATIONS}. */
    List<BackgroundFactor> defaultsByAllocation(String table, String subject, String quantity) {
        return allocated
                .computeIfAbsent(table, this::sortedDefaults)
                .getOrDefault(new About(subject, quantity), List.of());
    }

    private Map<About, List<BackgroundFactor>> sortedDefaults(String table) {
        return library.background(table).stream()
                .filter(BackgroundFactor::isDefault)
                .sorted(Comparator.comparingInt(
                        row -> ALLOCATIONS.indexOf(row.allocation().orElse("not-stated"))))
                .collect(Collectors.groupingBy(row -> new About(row.subject(), row.quantity())));
    }

    private Map<About, BackgroundFactor> firstDefaults(String table) {
        return library.background(table).stream()
                .filter(BackgroundFactor::isDefault)
                .collect(Collectors.toUnmodifiableMap(
                        row -> new About(row.subject(), row.quantity()), row -> row, (first, later) -> first));
    }

    private Map<About, List<BackgroundFactor>> index(String table) {
        return library.background(table).stream()
                .collect(Collectors.groupingBy(row -> new About(row.subject(), row.quantity())));
    }

    /**
     * The row nearest to a place and a year: the region itself before what contains it (see {@link Regions#nearestFirst}); then the
     * year nearest to the one given, the latest if none is given. Vintages are never averaged.
     */
    public Optional<BackgroundFactor> nearest(
            String table, String subject, String quantity, Optional<String> region, OptionalInt year) {
        return near.get(new Near(table, new About(subject, quantity), region, year), this::search);
    }

    private Optional<BackgroundFactor> search(Near wanted) {
        OptionalInt year = wanted.year();
        List<BackgroundFactor> rows =
                rows(wanted.table(), wanted.about().subject(), wanted.about().quantity());
        for (String place : library.regions().nearestFirst(wanted.region().orElse(Regions.WORLD))) {
            Optional<BackgroundFactor> here = rows.stream()
                    .filter(row -> row.region().orElse(Regions.WORLD).equals(place))
                    .min(Comparator.<BackgroundFactor>comparingInt(row -> year.isPresent()
                                    ? Math.abs(year.getAsInt() - row.year().orElse(0))
                                    : 0)
                            .thenComparing(row -> -row.year().orElse(0))
                            .thenComparing(row -> !row.isDefault()));
            if (here.isPresent()) {
                return here;
            }
        }
        return Optional.empty();
    }

    /** The moisture that a published dry matter leaves, as a default is reported. */
    Message moistureMessage(BackgroundFactor dryMatter) {
        return moistures.computeIfAbsent(
                dryMatter.id(),
                id -> Message.of(
                        "gap.moisture",
                        "percent",
                        Math.round(100 * (1 - fraction(dryMatter).central()))));
    }

    /** A row read as a factor, drawn under the row's id. */
    public Factor factor(BackgroundFactor row) {
        return factors.computeIfAbsent(
                row.id(),
                id -> new Factor(
                        id,
                        SpreadReading.read(
                                row.printed(), library.spreadDefaults().result())));
    }

    /** The same for a share, which cannot exceed 1. */
    public Factor fraction(BackgroundFactor row) {
        return fractions.computeIfAbsent(
                row.id(),
                id -> new Factor(
                        id,
                        SpreadReading.readFraction(
                                row.printed(), library.spreadDefaults().composition())));
    }
}

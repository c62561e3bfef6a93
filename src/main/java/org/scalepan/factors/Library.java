package org.scalepan.factors;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.scalepan.cite.Reference;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;

/**
 * The whole factor library in memory: immutable after loading, so that every answer is a pure function of the question, the
 * library and the seed.
 */
public final class Library {
    private final LibraryVersion version;
    private final Map<String, byte[]> documents;
    private final Map<String, Table> tables;
    private final Map<String, Reference> references;
    private final Map<String, Product> products;
    private final List<CompositionRow> composition;
    private final Map<String, AminoAcidPattern> aminoAcidPatterns;
    private final List<AminoAcidContent> aminoAcidContents;
    private final Map<String, QualityMethod> qualityMethods;
    private final List<FoodEnergyFactor> foodEnergyFactors;
    private final List<PublishedResult> results;
    private final List<StageSplit> stageSplits;
    private final List<GasShares> gasShares;
    private final List<PairedRatio> pairedRatios;
    private final Map<String, List<PublishedResult>> includedIn;
    private final Map<String, WarmingSet> warmingSets;
    private final Map<String, Indicator> indicators;
    private final Regions regions;
    private final List<Claim> claims;
    private final List<Caution> cautions;
    private final Map<String, List<VocabularyEntry>> vocabularies = new ConcurrentHashMap<>();
    private final Map<String, List<String>> ids = new ConcurrentHashMap<>();
    private final Map<String, Map<String, Row>> rowsById = new ConcurrentHashMap<>();
    private final SpreadDefaults spreadDefaults;
    private final Map<String, List<BackgroundFactor>> background;
    private final List<IpccRow> ipcc;
    private final List<ReferenceFarm> referenceFarms;
    private final Map<Class<?>, Object> views = new ConcurrentHashMap<>();

    /** The background tables, with the columns that say what a row is about and what is given of it. */
    private static final Map<String, List<String>> BACKGROUND = Map.ofEntries(
            Map.entry("ingredient_factors", List.of("ingredient", "indicator")),
            Map.entry("ingredient_composition", List.of("ingredient", "quantity")),
            Map.entry("energy_factors", List.of("carrier", "quantity")),
            Map.entry("transport_factors", List.of("mode", "quantity")),
            Map.entry("material_factors", List.of("material", "quantity")),
            Map.entry("water_factors", List.of("service", "indicator")),
            Map.entry("fertiliser_factors", List.of("fertiliser", "quantity")),
            Map.entry("processing_factors", List.of("process", "quantity")),
            Map.entry("insect_practice", List.of("product", "quantity")),
            Map.entry("frass", List.of("product", "quantity")),
            Map.entry("building_heat", List.of("subject", "quantity")),
            Map.entry("pond_factors", List.of("subject", "quantity")));

    public Library(
            LibraryVersion version,
            Map<String, Table> tables,
            List<Reference> references,
            Map<String, byte[]> documents,
            List<ReferenceFarm> referenceFarms) {
        this.version = version;
        this.referenceFarms = List.copyOf(referenceFarms);
        this.documents = Map.copyOf(documents);
        this.tables = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(tables));
        this.references = byId(references, Reference::id);
        this.products = byId(map("products", Product::of), Product::id);
        this.composition = map("composition", CompositionRow::of);
        List<AminoAcidRequirement> requirements = map("amino_acid_requirements", AminoAcidRequirement::of);
        this.aminoAcidPatterns =
                byId(map("amino_acid_patterns", row -> AminoAcidPattern.of(row, requirements)), AminoAcidPattern::id);
        this.aminoAcidContents = map("amino_acid_contents", AminoAcidContent::of);
        this.qualityMethods = byId(map("protein_quality", QualityMethod::of), QualityMethod::row);
        this.foodEnergyFactors = map("food_energy_factors", FoodEnergyFactor::of);
        this.results = java.util.stream.Stream.concat(
                        map("results", PublishedResult::of).stream(),
                        map("feed_conversion", PublishedResult::ofFeedConversion).stream())
                .toList();
        this.stageSplits = map("stage_splits", StageSplit::of);
        this.gasShares = map("gas_shares", GasShares::of);
        this.pairedRatios = map("paired_ratios", PairedRatio::of);
        this.includedIn = includedIn();
        List<WarmingPotential> potentials = map("warming_potentials", WarmingPotential::of);
        this.warmingSets = byId(map("warming_sets", row -> WarmingSet.of(row, potentials)), WarmingSet::id);
        this.indicators = byId(map("indicators", Indicator::of), Indicator::id);
        this.regions = new Regions(map("regions", Region::of));
        this.claims = map("claims", Claim::of);
        this.cautions = map("cautions", Caution::of);
        this.spreadDefaults = SpreadDefaults.of(table("default_spreads"), table("pooling"), table("pedigree"));
        Map<String, List<BackgroundFactor>> read = new LinkedHashMap<>();
        BACKGROUND.forEach((table, columns) ->
                read.put(table, map(table, row -> BackgroundFactor.of(row, columns.get(0), columns.get(1)))));
        this.background = Map.copyOf(read);
        this.ipcc = map("ipcc_livestock", IpccRow::of);
    }

    private <T> List<T> map(String table, Function<Row, T> read) {
        return table(table).rows().stream().map(read).toList();
    }

    private Map<String, List<PublishedResult>> includedIn() {
        Map<String, PublishedResult> byRow = byId(results, PublishedResult::id);
        Map<String, List<PublishedResult>> included = new LinkedHashMap<>();
        for (Row row : table("included_results").rows()) {
            PublishedResult result = byRow.get(row.text("included"));
            if (result != null) {
                included.computeIfAbsent(row.text("review"), review -> new ArrayList<>())
                        .add(result);
            }
        }
        return java.util.Collections.unmodifiableMap(included);
    }

    private static <T> Map<String, T> byId(Collection<T> items, Function<T, String> id) {
        Map<String, T> map = new LinkedHashMap<>();
        items.forEach(item -> map.put(id.apply(item), item));
        return java.util.Collections.unmodifiableMap(map);
    }

    public LibraryVersion version() {
        return version;
    }

    /** The files of its folder that are neither tables nor references, by name, as they were read. */
    public Map<String, byte[]> documents() {
        return documents;
    }

    /** A table as read, by the name it has in {@code datapackage.json}. */
    public Table table(String name) {
        Table table = tables.get(name);
        if (table == null) {
            throw new IllegalArgumentException("the library has no table " + name);
        }
        return table;
    }

    /** The row of a table that has an id. */
    public Optional<Row> row(String table, String id) {
        Map<String, Row> rows =
                rowsById.computeIfAbsent(table, name -> byId(table(name).rows(), row -> row.text("id")));
        return Optional.ofNullable(rows.get(id));
    }

    /** The reference farms, in the order of {@code datapackage.json}. */
    public List<ReferenceFarm> referenceFarms() {
        return referenceFarms;
    }

    /** Every table, in the order of {@code datapackage.json}. */
    public Collection<Table> tables() {
        return tables.values();
    }

    public Map<String, Reference> references() {
        return references;
    }

    public Map<String, Product> products() {
        return products;
    }

    /** The product and those that it includes: beef, and beef from the beef and the dairy herd. */
    public List<Product> withNarrower(Product product) {
        return products.values().stream()
                .filter(other -> other.id().equals(product.id())
                        || other.broader().filter(product.id()::equals).isPresent())
                .toList();
    }

    /** A table's rows as a plain vocabulary. */
    public List<VocabularyEntry> vocabulary(String table) {
        Table read = tables.get(table);
        return read == null
                ? List.of()
                : vocabularies.computeIfAbsent(
                        table,
                        name -> read.rows().stream()
                                .map(row -> VocabularyEntry.of(read, row))
                                .toList());
    }

    /** The ids of a vocabulary, in the order of its table. */
    public List<String> ids(String table) {
        return ids.computeIfAbsent(
                table,
                name -> vocabulary(name).stream().map(VocabularyEntry::id).toList());
    }

    public List<CompositionRow> composition() {
        return composition;
    }

    public Map<String, AminoAcidPattern> aminoAcidPatterns() {
        return aminoAcidPatterns;
    }

    /** The scoring pattern of a question that names none. */
    public AminoAcidPattern defaultAminoAcidPattern() {
        return aminoAcidPatterns.values().stream()
                .filter(AminoAcidPattern::isDefault)
                .findFirst()
                .orElseThrow();
    }

    public List<AminoAcidContent> aminoAcidContents() {
        return aminoAcidContents;
    }

    /** How protein-quality scores were measured, by the composition row that holds the score. */
    public Map<String, QualityMethod> qualityMethods() {
        return qualityMethods;
    }

    public List<FoodEnergyFactor> foodEnergyFactors() {
        return foodEnergyFactors;
    }

    public List<PublishedResult> results() {
        return results;
    }

    public List<StageSplit> stageSplits() {
        return stageSplits;
    }

    public List<GasShares> gasShares() {
        return gasShares;
    }

    public List<PairedRatio> pairedRatios() {
        return pairedRatios;
    }

    /** The results that a review is known to include; none where the result is no review or nobody has seen what it includes. */
    public List<PublishedResult> includedIn(PublishedResult review) {
        return includedIn.getOrDefault(review.id(), List.of());
    }

    public Map<String, WarmingSet> warmingSets() {
        return warmingSets;
    }

    /** The warming set of a question that names none. */
    public WarmingSet defaultWarmingSet() {
        return warmingSets.values().stream()
                .filter(WarmingSet::isDefault)
                .findFirst()
                .orElseThrow();
    }

    public Map<String, Indicator> indicators() {
        return indicators;
    }

    public Regions regions() {
        return regions;
    }

    public List<Claim> claims() {
        return claims;
    }

    public List<Caution> cautions() {
        return cautions;
    }

    /**
     * The cautions about products.
     *
     * @param market leaves out the law of other markets; with none, cautions of all markets are given
     */
    public List<Caution> cautionsAbout(Collection<Product> products, Optional<String> market) {
        return cautions.stream()
                .filter(caution -> products.stream().anyMatch(caution::concerns))
                .filter(caution -> market.map(caution::holdsIn).orElse(true))
                .toList();
    }

    public SpreadDefaults spreadDefaults() {
        return spreadDefaults;
    }

    /** The rows of a background table. */
    public List<BackgroundFactor> background(String table) {
        return background.getOrDefault(table, List.of());
    }

    /** The cells of the IPCC livestock tables. */
    public List<IpccRow> ipcc() {
        return ipcc;
    }

    /**
     * A view of this library that is computed once and cached, such as an index of its tables. The library is immutable, and so must its
     * views be.
     */
    public <T> T view(Class<T> kind, Function<Library, T> make) {
        Object view = views.get(kind);
        if (view == null) {
            // Computed outside the map, because a view may need another; of two computed at once one is cached.
            views.putIfAbsent(kind, make.apply(this));
            view = java.util.Objects.requireNonNull(views.get(kind));
        }
        return kind.cast(view);
    }

    /** The reference of a source id. */
    public Optional<Reference> reference(String source) {
        return Optional.ofNullable(references.get(source));
    }
}

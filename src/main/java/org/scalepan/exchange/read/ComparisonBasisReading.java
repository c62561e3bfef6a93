package org.scalepan.exchange.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.programme.SubstitutionQuestion;
import org.scalepan.ask.programme.Use;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.factors.Region;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.input.Excerpt;
import org.scalepan.input.Input;
import org.scalepan.literature.IntervalOf;
import org.scalepan.literature.LandUseChange;
import org.scalepan.production.Scope;

/** Reads the parameters that all comparing questions share: the comparison basis and the sampling. */
public final class ComparisonBasisReading {
    public static final int MOST_SOURCES = 50;
    public static final int MOST_UNITS = 8;

    static final List<String> BASIS = List.of(
            "per",
            "boundary",
            "luc",
            "gwp",
            "region",
            "grade",
            "sources",
            "exclude",
            "protein",
            "quality",
            "strict",
            "of",
            "evidence",
            "system");
    /** Which reference farm stands for a product is asked in query strings only: in bodies {@code system} is somebody's records. */
    private static final Set<String> NOT_IN_BODY = Set.of("sources", "exclude", "evidence", "system");

    static final List<String> SAMPLING = List.of("coverage", "draws", "seed");
    private static final List<String> YES_NO = List.of("no", "yes");

    /** The fields of a body: those of the comparison basis without its sources, and the sampling. */
    private static final List<String> IN_BODY = Stream.concat(BASIS.stream(), SAMPLING.stream())
            .filter(name -> !NOT_IN_BODY.contains(name))
            .toList();

    private final Library library;
    private final Input input;
    private final BoundaryChoice ends;
    private final Optional<FunctionalUnit> settled;

    /**
     * The system boundaries that a question allows.
     *
     * @param allowed the boundaries accepted
     * @param chosen the boundary of an indicator, given the one in the request, if any
     */
    private record BoundaryChoice(List<Boundary> allowed, BiFunction<Indicator, Optional<Boundary>, Boundary> chosen) {
        static final BoundaryChoice OF_LITERATURE = new BoundaryChoice(
                List.of(Boundary.values()), (indicator, asked) -> asked.orElse(indicator.defaultBoundary()));
        static final BoundaryChoice OF_RECORDS = new BoundaryChoice(
                Scope.BOUNDARIES,
                (indicator, asked) -> asked.orElse(Scope.boundaryOfRecords(indicator.defaultBoundary())));
    }

    private ComparisonBasisReading(
            Library library, Input input, BoundaryChoice ends, Optional<FunctionalUnit> settled) {
        this.library = library;
        this.input = input;
        this.ends = ends;
        this.settled = settled;
    }

    /** Reads a question about published products. */
    public ComparisonBasisReading(Library library, Input input) {
        this(library, input, BoundaryChoice.OF_LITERATURE, Optional.empty());
    }

    /** Reads a question about farms and herds, whose records end at the farm gate or before retail. */
    public static ComparisonBasisReading ofRecords(Library library, Input input) {
        return new ComparisonBasisReading(library, input, BoundaryChoice.OF_RECORDS, Optional.empty());
    }

    /**
     * Reads a question whose sides are products or records.
     *
     * @param recorded whether a side is computed from records
     */
    public static ComparisonBasisReading of(Library library, Input input, boolean recorded) {
        return recorded ? ofRecords(library, input) : new ComparisonBasisReading(library, input);
    }

    /** Reads a question about a programme, which fixes the functional unit itself and has no field for it. */
    public static ComparisonBasisReading ofProgramme(
            Library library, Input input, Use use, boolean recorded, FunctionalUnit per) {
        BoundaryChoice ends = new BoundaryChoice(
                SubstitutionQuestion.boundaries(recorded),
                (indicator, asked) -> use.boundary(indicator, asked, recorded));
        return new ComparisonBasisReading(library, input, ends, Optional.of(per));
    }

    /**
     * Declares the fields of the comparison basis and the sampling as known.
     *
     * @param own further fields of this question that are read in the same way
     */
    public ComparisonBasisReading inBody(String... own) {
        Stream.concat(Stream.of(own), IN_BODY.stream())
                .filter(name -> settled.isEmpty() || !name.equals("per"))
                .forEach(name -> {
                    if (name.equals("boundary")) {
                        askedBoundary();
                    } else {
                        input.raw(name);
                    }
                });
        return this;
    }

    /** The parameter names of a route: its own, then those of the comparison basis and the sampling. */
    public static List<String> with(String... own) {
        List<String> names = new ArrayList<>(List.of(own));
        names.addAll(BASIS);
        names.addAll(SAMPLING);
        return names;
    }

    /** The indicator named by a parameter. */
    public Indicator indicator(String name, String byDefault) {
        String id = input.oneOf(name, library.indicators().keySet(), byDefault);
        return library.indicators()
                .getOrDefault(id, library.indicators().values().iterator().next());
    }

    public ComparisonBasis basis(Indicator indicator) {
        if (settled.isPresent()) {
            return basis(indicator, settled.get());
        }
        FunctionalUnit usual = usualPer(indicator);
        return basis(indicator, input.oneOf("per", FunctionalUnit.askable(), FunctionalUnit::of, usual, usual.id()));
    }

    /** A comparison basis for each unit of a comma list, or for the default unit of the indicator. */
    public List<ComparisonBasis> bases(Indicator indicator) {
        List<String> pers = input.someOf(
                "per", FunctionalUnit.askable(), List.of(usualPer(indicator).id()), MOST_UNITS);
        return pers.stream()
                .flatMap(per -> FunctionalUnit.of(per).stream())
                .map(per -> basis(indicator, per))
                .toList();
    }

    private static FunctionalUnit usualPer(Indicator indicator) {
        return FunctionalUnit.of(indicator.defaultPer()).orElse(FunctionalUnit.KG_PROTEIN);
    }

    private ComparisonBasis basis(Indicator indicator, FunctionalUnit per) {
        Boundary boundary = boundary(indicator);
        LandUseChange luc = input.oneOf(
                "luc",
                List.of(LandUseChange.INCLUDE.id(), LandUseChange.EXCLUDE.id()),
                LandUseChange::of,
                LandUseChange.EXCLUDE,
                LandUseChange.EXCLUDE.id());
        WarmingSet newest = library.defaultWarmingSet();
        WarmingSet gwp = input.oneOf(
                "gwp",
                library.warmingSets().keySet(),
                id -> Optional.ofNullable(library.warmingSets().get(id)),
                newest,
                newest.id());
        String region = region();
        Grade grade = input.oneOf("grade", library.ids("grades"), Grade::of, Grade.USUAL, Grade.USUAL.id());
        Set<String> sources = sources("sources");
        Set<String> exclude = sources("exclude");
        ProteinBasis protein = input.oneOf(
                "protein",
                List.of(ProteinBasis.CRUDE.id(), ProteinBasis.CORRECTED.id()),
                ProteinBasis::of,
                ProteinBasis.CRUDE,
                ProteinBasis.CRUDE.id());
        boolean capped =
                input.oneOf("quality", List.of("capped", "uncapped"), "capped").equals("capped");
        boolean strict = input.oneOf("strict", YES_NO, "no").equals("yes");
        IntervalOf of = input.oneOf("of", IntervalOf.ids(), IntervalOf::of, IntervalOf.STUDY, IntervalOf.STUDY.id());
        return new ComparisonBasis(
                indicator,
                per,
                boundary,
                luc,
                gwp,
                region,
                grade,
                sources,
                exclude,
                protein,
                capped,
                strict,
                of,
                evidence(),
                referenceFarm());
    }

    private String region() {
        String typed = input.raw("region").orElse("world");
        Optional<Region> region = RegionNames.find(library.regions().all(), typed);
        if (region.isEmpty()) {
            input.unknown(
                    "region",
                    typed,
                    library.regions().all().stream().map(Region::id).toList());
        }
        String id = region.map(Region::id).orElse("world");
        input.resolve("region", id);
        return id;
    }

    private EvidenceKind evidence() {
        return input.isQuery()
                ? input.oneOf(
                        "evidence",
                        EvidenceKind.ids(),
                        EvidenceKind::of,
                        EvidenceKind.PUBLISHED,
                        EvidenceKind.PUBLISHED.id())
                : EvidenceKind.PUBLISHED;
    }

    private Optional<String> referenceFarm() {
        if (!input.isQuery()) {
            return Optional.empty();
        }
        List<String> farms =
                library.referenceFarms().stream().map(ReferenceFarm::id).toList();
        Optional<String> given = input.raw("system").map(id -> Input.asListed(id, farms));
        given.filter(id -> !farms.contains(id))
                .ifPresent(id -> input.unclear(
                        "system",
                        "unknown reference farm \"" + Excerpt.of(id) + "\"; /v1/reference-farms lists them",
                        Nearest.to(id, farms, 3)));
        given.ifPresent(id -> input.resolve("system", id));
        return given;
    }

    private Boundary boundary(Indicator indicator) {
        Optional<Boundary> asked = askedBoundary();
        Boundary chosen = ends.chosen().apply(indicator, asked);
        input.resolve("boundary", asked.orElse(chosen).id());
        return chosen;
    }

    private Optional<Boundary> askedBoundary() {
        List<String> allowed = Boundary.ids(ends.allowed());
        if (!input.isQuery()) {
            return input.oneOf("boundary", allowed).flatMap(Boundary::of);
        }
        return input.raw("boundary").flatMap(given -> Boundary.of(input.oneOf("boundary", allowed, allowed.get(0))));
    }

    /** Sources can be pinned and excluded in query strings only. */
    private Set<String> sources(String name) {
        if (!input.isQuery()) {
            return Set.of();
        }
        return Set.copyOf(input.someOf(name, library.references().keySet(), List.of(), MOST_SOURCES));
    }

    public Sampling sampling() {
        double coverage = input.number("coverage", 0.5, 0.99, Sampling.DEFAULT_COVERAGE);
        long draws = input.count("draws", Sampling.FEWEST_DRAWS, Sampling.MOST_DRAWS, Sampling.DEFAULT_DRAWS);
        long seed = input.whole("seed", 0, Integer.MAX_VALUE, Sampling.DEFAULT_SEED);
        return new Sampling(coverage, (int) draws, seed);
    }

    /** Refuses more draws than memory allows for so many footprints at once, and names the largest number allowed. */
    public void afford(Sampling sampling, int footprints) {
        long wanted = (long) footprints * sampling.draws();
        if (wanted > Sampling.MOST_DRAWS_OF_AN_ANSWER) {
            input.tooMuch(
                    "draws",
                    "draws may be at most " + Sampling.MOST_DRAWS_OF_AN_ANSWER / footprints + " for " + footprints
                            + " footprints: an answer makes at most " + Sampling.MOST_DRAWS_OF_AN_ANSWER
                            + " draws in all");
        }
    }
}

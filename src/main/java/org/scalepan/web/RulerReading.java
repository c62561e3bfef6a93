package org.scalepan.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scalepan.ask.Ruler;
import org.scalepan.ask.Sampling;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.factors.Region;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.literature.LandUseChange;

/** Reads the parameters that every question of comparison shares: the ruler and the sampling. */
final class RulerReading {
    static final List<String> RULER = List.of(
            "per", "boundary", "luc", "gwp", "region", "grade", "sources", "exclude", "protein", "quality", "strict");
    static final List<String> SAMPLING = List.of("coverage", "draws", "seed");
    private static final int MOST_SOURCES = 50;
    private static final int MOST_UNITS = 8;
    private static final List<String> YES_NO = List.of("no", "yes");

    private final Library library;
    private final Parameters parameters;

    RulerReading(Library library, Parameters parameters) {
        this.library = library;
        this.parameters = parameters;
    }

    /** The parameter names of a route that asks for a ruler and a sampling, after its own. */
    static List<String> with(String... own) {
        List<String> names = new ArrayList<>(List.of(own));
        names.addAll(RULER);
        names.addAll(SAMPLING);
        return names;
    }

    /** The indicator named by a parameter. */
    Indicator indicator(String name, String byDefault) {
        String id = parameters.oneOf(name, library.indicators().keySet(), byDefault);
        return library.indicators()
                .getOrDefault(id, library.indicators().values().iterator().next());
    }

    Ruler ruler(Indicator indicator) {
        FunctionalUnit usual = usualPer(indicator);
        return ruler(
                indicator, parameters.oneOf("per", FunctionalUnit.askable(), FunctionalUnit::of, usual, usual.id()));
    }

    /** A ruler for each unit of a comma list, or for the usual one of the indicator. */
    List<Ruler> rulers(Indicator indicator) {
        List<String> pers = parameters.someOf(
                "per", FunctionalUnit.askable(), List.of(usualPer(indicator).id()), MOST_UNITS);
        return pers.stream()
                .flatMap(per -> FunctionalUnit.of(per).stream())
                .map(per -> ruler(indicator, per))
                .toList();
    }

    private static FunctionalUnit usualPer(Indicator indicator) {
        return FunctionalUnit.of(indicator.defaultPer()).orElse(FunctionalUnit.KG_PROTEIN);
    }

    private Ruler ruler(Indicator indicator, FunctionalUnit per) {
        Boundary usual = indicator.defaultBoundary();
        Boundary boundary = parameters.oneOf("boundary", Boundary.ids(), Boundary::of, usual, usual.id());
        LandUseChange luc = parameters.oneOf(
                "luc",
                List.of(LandUseChange.INCLUDE.id(), LandUseChange.EXCLUDE.id()),
                LandUseChange::of,
                LandUseChange.EXCLUDE,
                LandUseChange.EXCLUDE.id());
        WarmingSet newest = library.defaultWarmingSet();
        WarmingSet gwp = parameters.oneOf(
                "gwp",
                library.warmingSets().keySet(),
                id -> Optional.ofNullable(library.warmingSets().get(id)),
                newest,
                newest.id());
        String region = parameters.oneOf(
                "region", library.regions().all().stream().map(Region::id).toList(), "world");
        Grade grade = parameters.oneOf("grade", library.ids("grades"), Grade::of, Grade.MEMORY, Grade.MEMORY.id());
        Set<String> sources = sources("sources");
        Set<String> exclude = sources("exclude");
        ProteinBasis protein = parameters.oneOf(
                "protein",
                List.of(ProteinBasis.CRUDE.id(), ProteinBasis.CORRECTED.id()),
                ProteinBasis::of,
                ProteinBasis.CRUDE,
                ProteinBasis.CRUDE.id());
        boolean capped = parameters
                .oneOf("quality", List.of("capped", "uncapped"), "capped")
                .equals("capped");
        boolean strict = parameters.oneOf("strict", YES_NO, "no").equals("yes");
        return new Ruler(indicator, per, boundary, luc, gwp, region, grade, sources, exclude, protein, capped, strict);
    }

    private Set<String> sources(String name) {
        return Set.copyOf(parameters.someOf(name, library.references().keySet(), List.of(), MOST_SOURCES));
    }

    Sampling sampling() {
        double coverage = parameters.number("coverage", 0.5, 0.99, Sampling.DEFAULT_COVERAGE);
        long draws = parameters.count("draws", Sampling.FEWEST_DRAWS, Sampling.MOST_DRAWS, Sampling.DEFAULT_DRAWS);
        long seed = parameters.whole("seed", 0, Integer.MAX_VALUE, Sampling.DEFAULT_SEED);
        return new Sampling(coverage, (int) draws, seed);
    }

    /** Refuses more draws than can be held in memory for so many footprints at once, with the most that would be right. */
    void afford(Sampling sampling, int footprints) {
        long wanted = (long) footprints * sampling.draws();
        if (wanted > Sampling.MOST_DRAWS_OF_AN_ANSWER) {
            parameters.tooMuch(
                    "draws",
                    "draws may be at most " + Sampling.MOST_DRAWS_OF_AN_ANSWER / footprints + " for " + footprints
                            + " footprints: an answer makes at most " + Sampling.MOST_DRAWS_OF_AN_ANSWER
                            + " draws in all");
        }
    }
}

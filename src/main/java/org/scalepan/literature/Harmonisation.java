package org.scalepan.literature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.scalepan.factors.Cited;
import org.scalepan.factors.GasShares;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.SpreadDefaults;
import org.scalepan.factors.StageSplit;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.Rebasing;
import org.scalepan.footprint.UnitChain;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.Pedigree;
import org.scalepan.uncertainty.SpreadKind;
import org.scalepan.uncertainty.SpreadReading;

/**
 * Puts one published result on the ruler of a question (M1 functional unit, M2 spread, M3 boundary and land-use change, M4
 * warming set), or says why it cannot be.
 */
final class Harmonisation {
    private static final String LUC = "luc";
    private static final String POST_FARM = "post-farm";
    private static final String RETAIL = "retail";
    private static final String FARM_GATE = "farm-gate";
    private static final String NOT_STATED = "not-stated";

    private final Library library;
    private final PoolQuestion question;

    Harmonisation(Library library, PoolQuestion question) {
        this.library = library;
        this.question = question;
    }

    /** What harmonising one result gives. */
    sealed interface Outcome {
        record Usable(Harmonised harmonised) implements Outcome {}

        record Unusable(PublishedResult result, String reason) implements Outcome {}
    }

    Outcome harmonise(PublishedResult result) {
        List<Step> steps = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        Optional<String> wrong = boundary(result, steps, notes);
        if (wrong.isEmpty() && question.indicator().isWarming()) {
            wrong = warmingSet(result, steps, notes);
        }
        if (wrong.isEmpty()) {
            wrong = unit(result, steps, notes);
        }
        if (wrong.isPresent()) {
            return new Outcome.Unusable(result, wrong.get());
        }
        return new Outcome.Usable(read(result, steps, notes));
    }

    private Harmonised read(PublishedResult result, List<Step> steps, List<Note> notes) {
        boolean none = result.printed().kind() == SpreadKind.NONE;
        double gsd = none ? assumedGsd(result) : 1;
        if (none) {
            notes.add(new Note(
                    Note.Codes.ASSUMED_SPREAD,
                    String.format(
                            Locale.ROOT,
                            "published without a spread; a geometric standard deviation of %.2f is assumed",
                            gsd)));
        }
        if (result.cited().check() == Grade.MEMORY) {
            notes.add(new Note(
                    Note.Codes.MEMORY_GRADED,
                    "the number was not seen for this library; it is from memory and provisional"));
        }
        if (result.overlaid()) {
            notes.add(new Note(Note.Codes.OWN_ROWS, "a row of your own library"));
        }
        if (result.feedBasis().filter(NOT_STATED::equals).isPresent()) {
            notes.add(new Note(
                    Note.Codes.FEED_BASIS_NOT_STATED,
                    "whether the feed is counted as fed or dry is not stated; read as fed"));
        }
        Distribution reading = SpreadReading.read(result.printed(), gsd);
        return new Harmonised(result, reading, gsd, steps, notes);
    }

    /** The basic spread, raised by the pedigree of the row: hand-scored criteria, and age and region against the question. */
    private double assumedGsd(PublishedResult result) {
        SpreadDefaults defaults = library.spreadDefaults();
        PublishedResult.PedigreeScores scores = result.pedigree();
        return Pedigree.gsd(
                defaults.result(),
                defaults.squaredFactor("reliability", scores.reliability()),
                defaults.squaredFactor("completeness", scores.completeness()),
                defaults.squaredFactor("technology", scores.technology()),
                defaults.squaredFactor("time", OptionalInt.of(timeScore(result))),
                defaults.squaredFactor("geography", OptionalInt.of(geographyScore(result))));
    }

    /** Weidema & Wesnæs 1996: under 3 years 1, under 6 years 2, under 10 years 3, under 15 years 4, older or unknown 5. */
    private int timeScore(PublishedResult result) {
        OptionalInt year = result.dataYear();
        if (year.isEmpty()) {
            year = library.reference(result.cited().source())
                    .map(org.scalepan.cite.Reference::year)
                    .orElse(OptionalInt.empty());
        }
        OptionalInt libraryYear = LibraryYear.of(library);
        if (year.isEmpty() || libraryYear.isEmpty()) {
            return 5;
        }
        int age = libraryYear.getAsInt() - year.getAsInt();
        return age < 3 ? 1 : age < 6 ? 2 : age < 10 ? 3 : age < 15 ? 4 : 5;
    }

    /** The same area 1; a larger area that includes it, or a part of it, 2; elsewhere 5. */
    private int geographyScore(PublishedResult result) {
        String asked = question.region();
        if (asked.equals(result.region())) {
            return 1;
        }
        boolean related = library.regions().contains(asked, result.region())
                || library.regions().contains(result.region(), asked);
        return related ? 2 : 5;
    }

    /** Boundary and land-use change go together, because one published split by stages answers for both. */
    private Optional<String> boundary(PublishedResult result, List<Step> steps, List<Note> notes) {
        boolean toFarm = result.boundary().equals(RETAIL) && question.boundary().equals(FARM_GATE);
        List<StageSplit> splits = splits(result);
        if (!result.boundary().equals(question.boundary()) && (!toFarm || splits.isEmpty())) {
            return Optional.of("its boundary is " + result.boundary()
                    + ", and its source publishes no stage split that leads to " + question.boundary());
        }
        boolean lucInside = result.luc().equals(LandUseChange.INCLUDE.inResults());
        boolean lucOut = lucInside && question.luc() == LandUseChange.EXCLUDE && !splits.isEmpty();
        if (toFarm || lucOut) {
            steps.add(stages(splits, toFarm, lucInside, lucOut));
            notes.add(new Note(Note.Codes.BY_STAGE_SPLIT, stageWords(toFarm, lucOut)));
            splits.stream()
                    .map(StageSplit::cited)
                    .distinct()
                    .forEach(cited -> fromMemory("the stage split", cited, notes));
        }
        boolean lucAsAsked = lucOut || result.luc().equals(question.luc().inResults());
        if (question.indicator().isWarming() && !lucAsAsked) {
            notes.add(lucNote(result));
        }
        return Optional.empty();
    }

    private static String stageWords(boolean toFarm, boolean lucOut) {
        String what = toFarm && lucOut
                ? "carried from retail to the farm gate and freed of land-use change"
                : toFarm ? "carried from retail to the farm gate" : "freed of land-use change";
        return what + " by the stage proportions of its source's world totals";
    }

    private Note lucNote(PublishedResult result) {
        if (result.luc().equals(NOT_STATED)) {
            return new Note(
                    Note.Codes.LUC_NOT_STATED, "whether land-use change is counted is not stated; kept as published");
        }
        return new Note(
                Note.Codes.LUC_NOT_SPLIT,
                "land-use change is " + result.luc() + " and the source does not split it; kept as published");
    }

    private List<StageSplit> splits(PublishedResult result) {
        return library.stageSplits().stream()
                .filter(split -> split.cited().check().isAtLeast(question.lowestGrade()))
                .filter(split -> split.cited().source().equals(result.cited().source())
                        && split.product().equals(result.product())
                        && split.indicator().equals(result.indicator()))
                .toList();
    }

    private static Step.ByStages stages(List<StageSplit> splits, boolean toFarm, boolean lucInside, boolean lucOut) {
        List<StageSplit> kept = new ArrayList<>();
        List<StageSplit> dropped = new ArrayList<>();
        for (StageSplit split : splits) {
            switch (split.stage()) {
                case LUC -> {
                    if (lucInside) {
                        (lucOut ? dropped : kept).add(split);
                    }
                }
                case POST_FARM -> (toFarm ? dropped : kept).add(split);
                default -> kept.add(split);
            }
        }
        double keptSum = kept.stream().mapToDouble(StageSplit::value).sum();
        double all = keptSum + dropped.stream().mapToDouble(StageSplit::value).sum();
        return new Step.ByStages(keptSum / all, kept, dropped);
    }

    private Optional<String> warmingSet(PublishedResult result, List<Step> steps, List<Note> notes) {
        String printed = result.gwp().orElse(NOT_STATED);
        WarmingSet asked = question.gwp();
        if (printed.equals(asked.id())) {
            return Optional.empty();
        }
        Optional<WarmingSet> from = Optional.ofNullable(library.warmingSets().get(printed));
        Optional<GasShares> shares = from.flatMap(set -> shares(result, set));
        if (from.isPresent() && shares.isPresent()) {
            WarmingSet under = library.warmingSets().get(shares.get().gwp());
            if (under != null) {
                Rebasing rebasing = new Rebasing(shares.get(), under, from.get(), asked);
                steps.add(new Step.ToWarmingSet(rebasing));
                fromMemory("the gas shares", shares.get().cited(), notes);
                if (rebasing.isOpen()) {
                    notes.add(new Note(
                            Note.Codes.OPEN_GAS_SHARES,
                            "re-based from " + printed + " to " + asked.id()
                                    + " by its methane share; how the rest parts into N2O and CO2 is not published, so every"
                                    + " parting is allowed"));
                }
                return Optional.empty();
            }
        }
        String why = from.isEmpty()
                ? "its warming set is not stated"
                : "it is under " + printed + " and its gas shares are not published";
        if (question.strict()) {
            return Optional.of(why + " (strict)");
        }
        notes.add(new Note(Note.Codes.OTHER_WARMING_SET, why + "; kept as published"));
        return Optional.empty();
    }

    /** The source's own shares for the product at that boundary; shares stated under the printed set come first. */
    private Optional<GasShares> shares(PublishedResult result, WarmingSet printed) {
        return library.gasShares().stream()
                .filter(shares -> shares.cited().check().isAtLeast(question.lowestGrade()))
                .filter(shares -> shares.cited().source().equals(result.cited().source())
                        && shares.product().equals(result.product())
                        && shares.boundary().equals(result.boundary()))
                .min(Comparator.comparing(shares -> !shares.gwp().equals(printed.id())));
    }

    private Optional<String> unit(PublishedResult result, List<Step> steps, List<Note> notes) {
        FunctionalUnit from = FunctionalUnit.of(result.per()).orElseThrow();
        Product product = library.products().get(result.product());
        if (product == null) {
            throw new IllegalStateException("the loader let a result of an unknown product through: " + result.id());
        }
        UnitChain chain = new UnitChain(
                library,
                product,
                result.form(),
                result.cited().source(),
                question.protein(),
                question.qualityCapped(),
                question.lowestGrade());
        ChainPath path = chain.path(from, question.per());
        if (path instanceof ChainPath.Missing missing) {
            return Optional.of(missing.text());
        }
        List<ChainStep> way = ((ChainPath.Found) path).steps();
        way.forEach(step -> steps.add(new Step.ToUnit(step)));
        published(way).forEach(step -> conversion(step, notes));
        published(way)
                .filter(step -> !step.row().product().equals(product.id()))
                .map(step -> step.row().product())
                .distinct()
                .forEach(broader -> notes.add(new Note(
                        Note.Codes.BROADER_PRODUCT,
                        "converted with composition of " + broader + ", which includes " + product.id())));
        return Optional.empty();
    }

    /** A conversion is a number too: what is thin about it is as thin in the answer. */
    private static void conversion(ChainStep.Published step, List<Note> notes) {
        String what =
                step.row().quantity().replace('-', ' ') + " of " + step.row().product();
        if (step.factor().spreadIsAssumed()) {
            notes.add(new Note(
                    Note.Codes.ASSUMED_SPREAD,
                    "converted with the " + what + ", published without a spread; a small one is assumed"));
        }
        fromMemory("the " + what, step.row().cited(), notes);
    }

    private static void fromMemory(String what, Cited cited, List<Note> notes) {
        if (cited.check() == Grade.MEMORY) {
            notes.add(new Note(
                    Note.Codes.MEMORY_GRADED,
                    "converted with " + what + " after " + cited.source()
                            + ", which was not seen for this library; it is from memory and provisional"));
        }
    }

    private static Stream<ChainStep.Published> published(List<ChainStep> way) {
        return way.stream().filter(ChainStep.Published.class::isInstance).map(ChainStep.Published.class::cast);
    }
}

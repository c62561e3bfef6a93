package org.scalepan.literature;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.StageSplit;
import org.scalepan.uncertainty.SpreadKind;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/**
 * Converts a result from retail to the farm gate, or excludes its land-use change, by the stage split that its own source publishes.
 * Boundary and land-use change are converted together, because one split covers both. Land alone needs no split: none to speak of is
 * occupied after the farm. There is no other conversion to another boundary.
 */
final class StageConversion {
    private static final String LUC = "luc";
    private static final String POST_FARM = "post-farm";
    private static final String NOT_STATED = "not-stated";
    private static final String LAND = "land";
    private static final String MEDIAN = "median";

    private final Library library;
    private final PoolQuestion question;

    StageConversion(Library library, PoolQuestion question) {
        this.library = library;
        this.question = question;
    }

    /** Adds the step and its notes, or says why there is none. */
    Optional<Message> convert(PublishedResult result, List<HarmonisationStep> steps, List<Note> notes) {
        boolean toFarm = result.boundary() == Boundary.RETAIL && question.boundary() == Boundary.FARM_GATE;
        boolean land = toFarm && question.indicator().id().equals(LAND);
        List<StageSplit> splits = splits(result);
        if (result.boundary() != question.boundary() && !land && (!toFarm || splits.isEmpty())) {
            return Optional.of(Message.of(
                    noSplit(result),
                    "boundary",
                    result.boundary().id(),
                    "asked",
                    question.boundary().id()));
        }
        boolean lucInside = result.luc().equals(LandUseChange.INCLUDE.inResults());
        boolean lucOut = lucInside && question.luc() == LandUseChange.EXCLUDE && !splits.isEmpty();
        if (!splits.isEmpty() && (toFarm || lucOut)) {
            HarmonisationStep.ByStages step = step(result, splits, toFarm, lucInside, lucOut);
            steps.add(step);
            notes.add(new Note(Note.Codes.BY_STAGE_SPLIT, words(toFarm, lucOut)));
            if (ofMeansUponOthers(result) && step.bounds()[0] < 1) {
                notes.add(new Note(Note.Codes.SPLIT_OF_MEANS, splitOfMeans(step)));
            }
        }
        if (land) {
            notes.add(new Note(Note.Codes.LAND_FROM_RETAIL, Message.of("note.land-from-retail")));
        }
        boolean lucAsAsked = lucOut || result.luc().equals(question.luc().inResults());
        if (question.indicator().isWarming() && !lucAsAsked) {
            notes.add(lucNote(result));
        }
        return Optional.empty();
    }

    /** A split is of means of the world; upon a median and percentiles it is no split of theirs. */
    private static boolean ofMeansUponOthers(PublishedResult result) {
        return result.printed().kind() == SpreadKind.PERCENTILES
                || result.statistic().filter(MEDIAN::equals).isPresent();
    }

    private static Message splitOfMeans(HarmonisationStep.ByStages step) {
        return step.landUse()
                .map(drawn -> Message.of(
                        "note.split-of-means.luc",
                        "lowest",
                        new Figure(String.format(Locale.ROOT, "%.2f", drawn.lowest()))))
                .orElseGet(() -> Message.of("note.split-of-means"));
    }

    /** The source's split of the product under the very warming set of the result: stage shares differ between sets. */
    private List<StageSplit> splits(PublishedResult result) {
        return library.stageSplits().stream()
                .filter(split -> split.cited().source().equals(result.cited().source())
                        && split.product().equals(result.product())
                        && split.indicator().equals(result.indicator())
                        && split.gwp().equals(result.gwp())
                        && split.cited().check().isAtLeast(question.lowestGrade()))
                .toList();
    }

    private String noSplit(PublishedResult result) {
        boolean underAnother = library.stageSplits().stream()
                .anyMatch(split -> split.cited().source().equals(result.cited().source())
                        && split.product().equals(result.product()));
        return underAnother ? "unused.split-under-other-set" : "unused.no-split";
    }

    private static HarmonisationStep.ByStages step(
            PublishedResult result, List<StageSplit> splits, boolean toFarm, boolean lucInside, boolean lucOut) {
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
        double keptSum = sum(kept.stream());
        double all = keptSum + sum(dropped.stream());
        Optional<StageSplit> luc =
                dropped.stream().filter(split -> split.stage().equals(LUC)).findFirst();
        if (luc.isEmpty() || luc.get().value() <= 0 || !ofMeansUponOthers(result)) {
            return new HarmonisationStep.ByStages(keptSum / all, Optional.empty(), kept, dropped);
        }
        double withLuc = keptSum + luc.get().value();
        return new HarmonisationStep.ByStages(
                withLuc / all,
                Optional.of(new HarmonisationStep.LandUseFactor(
                        luc.get().id(), luc.get().value() / withLuc)),
                kept,
                dropped);
    }

    private static double sum(Stream<StageSplit> splits) {
        return splits.mapToDouble(StageSplit::value).sum();
    }

    private static Message words(boolean toFarm, boolean lucOut) {
        return Message.of(
                toFarm && lucOut
                        ? "note.by-stages.both"
                        : toFarm ? "note.by-stages.to-farm" : "note.by-stages.without-luc");
    }

    private static Note lucNote(PublishedResult result) {
        if (result.luc().equals(NOT_STATED)) {
            return new Note(Note.Codes.LUC_NOT_STATED, Message.of("note.luc-not-stated"));
        }
        return new Note(Note.Codes.LUC_NOT_SPLIT, Message.of("note.luc-not-split", "luc", result.luc()));
    }
}

package org.scalepan.literature;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.StageSplit;

/**
 * Converts a result from retail to the farm gate, or excludes its land-use change, by the stage split that its own source publishes.
 * Boundary and land-use change are converted together, because one split covers both. There is no other conversion to another boundary.
 */
final class StageConversion {
    private static final String LUC = "luc";
    private static final String POST_FARM = "post-farm";
    private static final String NOT_STATED = "not-stated";

    private final Library library;
    private final PoolQuestion question;

    StageConversion(Library library, PoolQuestion question) {
        this.library = library;
        this.question = question;
    }

    /** Adds the step and its notes, or says why there is none. */
    Optional<String> convert(PublishedResult result, List<HarmonisationStep> steps, List<Note> notes) {
        boolean toFarm = result.boundary() == Boundary.RETAIL && question.boundary() == Boundary.FARM_GATE;
        List<StageSplit> splits = splits(result);
        if (result.boundary() != question.boundary() && (!toFarm || splits.isEmpty())) {
            return Optional.of("its boundary is " + result.boundary().id() + ", and " + noSplit(result) + " "
                    + question.boundary().id());
        }
        boolean lucInside = result.luc().equals(LandUseChange.INCLUDE.inResults());
        boolean lucOut = lucInside && question.luc() == LandUseChange.EXCLUDE && !splits.isEmpty();
        if (toFarm || lucOut) {
            steps.add(step(splits, toFarm, lucInside, lucOut));
            notes.add(new Note(Note.Codes.BY_STAGE_SPLIT, words(toFarm, lucOut)));
        }
        boolean lucAsAsked = lucOut || result.luc().equals(question.luc().inResults());
        if (question.indicator().isWarming() && !lucAsAsked) {
            notes.add(lucNote(result));
        }
        return Optional.empty();
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
        return underAnother
                ? "its source's stage split is under another warming set and cannot lead it to"
                : "its source publishes no stage split that leads to";
    }

    private static HarmonisationStep.ByStages step(
            List<StageSplit> splits, boolean toFarm, boolean lucInside, boolean lucOut) {
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
        return new HarmonisationStep.ByStages(keptSum / all, kept, dropped);
    }

    private static String words(boolean toFarm, boolean lucOut) {
        String what = toFarm && lucOut
                ? "carried from retail to the farm gate and freed of land-use change"
                : toFarm ? "carried from retail to the farm gate" : "freed of land-use change";
        return what + " by the stage proportions of its source's world totals";
    }

    private static Note lucNote(PublishedResult result) {
        if (result.luc().equals(NOT_STATED)) {
            return new Note(
                    Note.Codes.LUC_NOT_STATED, "whether land-use change is counted is not stated; kept as published");
        }
        return new Note(
                Note.Codes.LUC_NOT_SPLIT,
                "land-use change is " + result.luc() + " and the source does not split it; kept as published");
    }
}

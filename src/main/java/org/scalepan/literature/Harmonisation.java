package org.scalepan.literature;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.scalepan.cite.Reference;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.PublishedResult;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.UnitChain;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.SpreadKind;
import org.scalepan.uncertainty.SpreadReading;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/**
 * Puts one published result on the basis of a question, or says why it cannot be: boundary and land-use change, then warming set,
 * then functional unit, then the spread.
 */
final class Harmonisation {
    private static final String NOT_STATED = "not-stated";

    private final Library library;
    private final PoolQuestion question;
    private final StageConversion stages;
    private final WarmingConversion warming;
    private final AssumedSpread assumed;

    Harmonisation(Library library, PoolQuestion question) {
        this.library = library;
        this.question = question;
        this.stages = new StageConversion(library, question);
        this.warming = new WarmingConversion(library, question);
        this.assumed = new AssumedSpread(library, question);
    }

    /** What harmonising one result gives. */
    sealed interface HarmonisationOutcome {
        record Usable(Harmonised harmonised) implements HarmonisationOutcome {}

        record Unusable(PublishedResult result, Message reason) implements HarmonisationOutcome {}
    }

    HarmonisationOutcome harmonise(PublishedResult result) {
        List<HarmonisationStep> steps = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        Optional<Message> wrong = stages.convert(result, steps, notes);
        if (wrong.isEmpty() && question.indicator().isWarming()) {
            wrong = warming.convert(result, steps, notes);
        }
        if (wrong.isEmpty()) {
            wrong = unit(result, steps, notes);
        }
        return wrong.<HarmonisationOutcome>map(reason -> new HarmonisationOutcome.Unusable(result, reason))
                .orElseGet(() -> new HarmonisationOutcome.Usable(read(result, steps, notes)));
    }

    private Optional<Message> unit(PublishedResult result, List<HarmonisationStep> steps, List<Note> notes) {
        Product product = library.products().get(result.product());
        if (product == null) {
            throw new IllegalStateException("the loader let a result of an unknown product through: " + result.id());
        }
        ChainPath path = path(result, product, question.lowestGrade());
        if (path instanceof ChainPath.MissingConversion missing) {
            return Optional.of(unseen(result, product).orElse(missing.message()));
        }
        for (ChainStep step : ((ChainPath.FoundPath) path).steps()) {
            steps.add(new HarmonisationStep.ToUnit(step));
            if (step instanceof ChainStep.PublishedStep published) {
                note(published, product, notes);
            }
        }
        return Optional.empty();
    }

    private static void note(ChainStep.PublishedStep step, Product product, List<Note> notes) {
        CompositionRow row = step.row();
        if (!row.product().equals(product.id())) {
            notes.add(new Note(
                    Note.Codes.BROADER_PRODUCT,
                    Message.of(
                            "note.broader-product",
                            "quantity",
                            row.quantity(),
                            "broader",
                            row.product(),
                            "product",
                            product.id())));
        }
        if (row.cited().check() == Grade.MEMORY) {
            notes.add(new Note(
                    Note.Codes.MEMORY_CONVERSION,
                    Message.of("note.memory-conversion", "quantity", row.quantity(), "row", row.id())));
        }
        if (step.factor().spreadIsAssumed()) {
            notes.add(new Note(
                    Note.Codes.ASSUMED_CONVERSION_SPREAD,
                    Message.of("note.assumed-conversion-spread", "quantity", row.quantity(), "row", row.id())));
        }
    }

    private ChainPath path(PublishedResult result, Product product, Grade lowest) {
        return UnitChain.of(
                        library,
                        product,
                        result.form(),
                        result.cited().source(),
                        question.protein(),
                        question.qualityCapped(),
                        lowest)
                .path(FunctionalUnit.of(result.per()).orElseThrow(), question.per());
    }

    /** Why a result that was seen cannot be used: its conversion was not, and which question uses it nevertheless. */
    private Optional<Message> unseen(PublishedResult result, Product product) {
        if (question.lowestGrade() == Grade.MEMORY
                || !(path(result, product, Grade.MEMORY) instanceof ChainPath.FoundPath found)) {
            return Optional.empty();
        }
        String rows = found.steps().stream()
                .filter(ChainStep.PublishedStep.class::isInstance)
                .map(step -> ((ChainStep.PublishedStep) step).row())
                .filter(row -> !row.cited().check().isAtLeast(question.lowestGrade()))
                .map(CompositionRow::id)
                .distinct()
                .collect(Collectors.joining(", "));
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(Message.of(
                        "unused.conversion-unseen",
                        "unit",
                        question.per().id(),
                        "rows",
                        rows,
                        "grade",
                        question.lowestGrade().id(),
                        "memory",
                        Grade.MEMORY.id()));
    }

    private boolean isIdentified(PublishedResult result) {
        return library.reference(result.cited().source())
                .map(Reference::isIdentified)
                .orElse(true);
    }

    private Harmonised read(PublishedResult result, List<HarmonisationStep> steps, List<Note> notes) {
        boolean inputs = result.printed().kind() == SpreadKind.INPUT_RANGE;
        boolean none = result.printed().kind() == SpreadKind.NONE;
        double gsd = none || inputs ? assumed.gsd(result) : 1;
        if (inputs) {
            notes.add(new Note(
                    Note.Codes.ASSUMED_SPREAD, Message.of("note.assumed-spread.inputs", "gsd", hundredths(gsd))));
        }
        if (none) {
            notes.add(new Note(Note.Codes.ASSUMED_SPREAD, Message.of("note.assumed-spread", "gsd", hundredths(gsd))));
        }
        if (result.cited().check() == Grade.MEMORY) {
            notes.add(new Note(Note.Codes.MEMORY_GRADED, Message.of("note.memory-graded")));
        }
        if (!isIdentified(result)) {
            notes.add(new Note(Note.Codes.PUBLICATION_NOT_IDENTIFIED, Message.of("note.publication-not-identified")));
        }
        if (result.overlaid()) {
            notes.add(new Note(Note.Codes.OWN_ROWS, Message.of("note.own-rows")));
        }
        if (result.feedBasis().filter(NOT_STATED::equals).isPresent()) {
            notes.add(new Note(Note.Codes.FEED_BASIS_NOT_STATED, Message.of("note.feed-basis")));
        }
        if (none && result.statistic().filter("mean"::equals).isPresent()) {
            notes.add(new Note(Note.Codes.STATISTIC_MEAN, Message.of("note.statistic-mean")));
        }
        Distribution reading = SpreadReading.read(result.printed(), gsd);
        OptionalDouble betweenFarms = betweenFarms(result, reading);
        return new Harmonised(result, reading, gsd, lnError(result, reading, betweenFarms), betweenFarms, steps, notes);
    }

    private static Figure hundredths(double value) {
        return new Figure(String.format(Locale.ROOT, "%.2f", value));
    }

    /** How much farms differ, where a survey of several prints it. */
    private static OptionalDouble betweenFarms(PublishedResult result, Distribution reading) {
        boolean dispersion = switch (result.printed().kind()) {
            case SD, P5_P95, P10_P90, PERCENTILES, RANGE -> true;
            case SE, CI95, INPUT_RANGE, NONE -> false;
        };
        return dispersion && result.farms().orElse(1) > 1 && reading.lnSd() > 0
                ? OptionalDouble.of(reading.lnSd())
                : OptionalDouble.empty();
    }

    /** A survey errs by its dispersion over the root of its number of farms. What prints no spread errs as is assumed. */
    private double lnError(PublishedResult result, Distribution reading, OptionalDouble betweenFarms) {
        if (betweenFarms.isPresent()) {
            return betweenFarms.getAsDouble() / Math.sqrt(result.farms().orElse(1));
        }
        return reading.lnSd() > 0 ? reading.lnSd() : StrictMath.log(assumed.gsd(result));
    }
}

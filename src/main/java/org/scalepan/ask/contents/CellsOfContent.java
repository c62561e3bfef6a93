package org.scalepan.ask.contents;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.claim.Verdict;
import org.scalepan.ask.contents.ContentCell.SideOfCell;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.ask.nutrition.MeasuredQuality;
import org.scalepan.ask.nutrition.Nutrient;
import org.scalepan.ask.nutrition.NutritionFacts;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.words.Message;

/** Lays a claim of contents out over every basis and every form of a food of which something is published. */
final class CellsOfContent {
    private static final String FRESH = "fresh";

    private final FoodSamples samples;
    private final ContentQuestion question;
    private final ProductForm asked;

    CellsOfContent(FoodSamples samples, ContentQuestion question, ProductForm asked) {
        this.samples = samples;
        this.question = question;
        this.asked = asked;
    }

    /** The cell asked first, with or without evidence; then those with evidence. */
    List<ContentCell> cells() {
        List<ContentCell> cells = new ArrayList<>();
        for (ProductForm food : samples.forms(asked)) {
            if (question.claimed() instanceof ContentClaimed.NutrientAmount amount) {
                amounts(food, amount, cells);
            } else if (question.claimed() instanceof ContentClaimed.ProteinAsGood) {
                quality(food, cells);
            } else if (question.claimed() instanceof ContentClaimed.CompleteProtein) {
                complete(food, cells);
            } else if (question.claimed() instanceof ContentClaimed.AllAminoAcids) {
                acids(food, cells);
            }
        }
        List<ContentCell> kept = new ArrayList<>(
                cells.stream().filter(ContentCell::asked).limit(1).toList());
        if (kept.isEmpty()) {
            kept.add(nothing());
        }
        cells.stream()
                .filter(cell -> !cell.asked() && cell.verdict() != Verdict.NO_EVIDENCE)
                .forEach(kept::add);
        return kept;
    }

    private ContentCell nothing() {
        Message why = question.claimed() instanceof ContentClaimed.UnsaturatedFat
                ? Message.of("content-missing.fatty-acids")
                : Message.of("content-missing.nothing", "food", asked.name());
        return new ContentCell(
                asked,
                question.reference(),
                question.claimed().id(),
                "",
                Optional.empty(),
                true,
                false,
                false,
                Verdict.NO_EVIDENCE,
                Optional.empty(),
                SideOfCell.missing(why),
                Optional.empty());
    }

    private void amounts(ProductForm food, ContentClaimed.NutrientAmount amount, List<ContentCell> cells) {
        boolean protein = amount.nutrient() == Nutrient.PROTEIN;
        List<String> quantities =
                protein ? List.of(Nutrient.PROTEIN.id(), NutritionFacts.CORRECTED) : List.of(amount.id());
        String wanted =
                protein && question.protein() == ProteinBasis.CORRECTED ? NutritionFacts.CORRECTED : amount.id();
        for (Basis basis : Basis.values()) {
            if (isExact(amount.nutrient(), basis)) {
                continue;
            }
            for (String quantity : quantities) {
                boolean isAsked = food.equals(asked) && basis == question.basis() && quantity.equals(wanted);
                cells.add(amount(food, amount, basis, quantity, isAsked));
            }
        }
    }

    /** Ten grams of protein hold ten grams of protein. */
    private static boolean isExact(Nutrient nutrient, Basis basis) {
        return (nutrient == Nutrient.PROTEIN && basis == Basis.TEN_GRAMS_PROTEIN)
                || (nutrient == Nutrient.ENERGY && basis == Basis.HUNDRED_KILOCALORIES);
    }

    private ContentCell amount(
            ProductForm food, ContentClaimed.NutrientAmount amount, Basis basis, String quantity, boolean isAsked) {
        ProductForm reference = question.reference().orElseThrow();
        boolean water = !basis.isFairAcrossForms() && isFresh(food) != isFresh(reference);
        return compared(
                food,
                quantity,
                amount.nutrient().unit(),
                Optional.of(basis),
                isAsked,
                water,
                samples.figure(food, basis, quantity),
                samples.figure(reference, basis, quantity),
                amount.times(),
                amount.less());
    }

    private static boolean isFresh(ProductForm food) {
        return food.form().equals(FRESH);
    }

    private void quality(ProductForm food, List<ContentCell> cells) {
        for (String kind : List.of(MeasuredQuality.DIAAS, MeasuredQuality.PDCAAS)) {
            cells.add(compared(
                    food,
                    kind,
                    "of the requirement",
                    Optional.empty(),
                    food.equals(asked) && kind.equals(MeasuredQuality.DIAAS),
                    false,
                    score(food, kind),
                    score(question.reference().orElseThrow(), kind),
                    1,
                    false));
        }
    }

    private SideOfCell score(ProductForm food, String kind) {
        return samples.quality(food, kind)
                .map(SideOfCell::of)
                .orElseGet(() ->
                        SideOfCell.missing(Message.of("content-missing.score", "kind", kind, "food", food.name())));
    }

    private ContentCell compared(
            ProductForm food,
            String quantity,
            String unit,
            Optional<Basis> basis,
            boolean isAsked,
            boolean water,
            SideOfCell productSide,
            SideOfCell referenceSide,
            double times,
            boolean less) {
        Optional<SampleRatio> ratio = Optional.empty();
        boolean thin = false;
        Verdict verdict = Verdict.NO_EVIDENCE;
        if (productSide.found().isPresent() && referenceSide.found().isPresent()) {
            SampleRange product = productSide.found().get();
            SampleRange reference = referenceSide.found().get();
            ratio = less ? SampleRatio.of(reference, product) : SampleRatio.of(product, reference);
            thin = product.isThin() || reference.isThin();
            boolean isThin = thin;
            verdict = ratio.map(found -> found.verdict(times, isThin)).orElse(Verdict.OPEN);
        }
        return new ContentCell(
                food,
                question.reference(),
                quantity,
                unit,
                basis,
                isAsked,
                water,
                thin,
                verdict,
                ratio,
                productSide,
                Optional.of(referenceSide));
    }

    private void complete(ProductForm food, List<ContentCell> cells) {
        ProteinFinding finding = ProteinFinding.of(samples, food, question.grade());
        List<SampleRange> scores = new ArrayList<>();
        for (String kind : List.of(MeasuredQuality.DIAAS, MeasuredQuality.PDCAAS)) {
            samples.quality(food, kind).ifPresent(found -> {
                scores.add(found);
                Verdict verdict = new SampleRatio(found.low(), found.value(), found.high()).verdict(1, found.isThin());
                cells.add(alone(food, kind, "of the requirement", food.equals(asked), found, verdict));
            });
        }
        finding.score().ifPresent(score -> {
            SampleRange found = new SampleRange(
                    score.value(),
                    score.isComplete() ? score.value() : 0,
                    score.value(),
                    1,
                    finding.rows(),
                    finding.sources(),
                    score.limiting().requirement().cited().check(),
                    score.isComplete() ? List.of() : List.of("incomplete-profile"));
            cells.add(alone(
                    food,
                    "amino-acid-score",
                    "of the requirement, not corrected for digestion",
                    food.equals(asked) && scores.isEmpty(),
                    found,
                    Verdict.OPEN));
        });
    }

    private void acids(ProductForm food, List<ContentCell> cells) {
        ProteinFinding finding = ProteinFinding.of(samples, food, question.grade());
        if (!finding.isKnown()) {
            return;
        }
        // Drying takes no amino acid away: where the form asked is not known another stands for it.
        boolean isAsked = cells.isEmpty();
        int found =
                finding.hasAll() ? finding.indispensable() : finding.present().size();
        Verdict verdict = finding.hasAll() ? Verdict.HOLDS : finding.absent().isEmpty() ? Verdict.OPEN : Verdict.FAILS;
        cells.add(alone(
                food,
                "indispensable-amino-acids",
                "of " + finding.indispensable(),
                isAsked,
                new SampleRange(found, found, found, 1, finding.rows(), finding.sources(), question.grade(), List.of()),
                verdict));
    }

    private ContentCell alone(
            ProductForm food, String quantity, String unit, boolean isAsked, SampleRange found, Verdict verdict) {
        return new ContentCell(
                food,
                Optional.empty(),
                quantity,
                unit,
                Optional.empty(),
                isAsked,
                false,
                found.isThin(),
                verdict,
                Optional.empty(),
                SideOfCell.of(found),
                Optional.empty());
    }
}

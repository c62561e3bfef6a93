package org.scalepan.ask.contents;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.claim.Claimed;
import org.scalepan.ask.nutrition.Nutrient;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/** What is claimed of the contents of a food. */
public sealed interface ContentClaimed {
    /** Ids of what is no nutrient of the composition table. */
    String UNSATURATED_FAT = "unsaturated-fat";

    String AMINO_ACIDS = "amino-acids";
    String COMPLETE_PROTEIN = "complete-protein";
    String PROTEIN_QUALITY = "protein-quality";

    /** As a question names it. */
    String id();

    /** The message of the claim. */
    String key();

    /** The multiple that is claimed, as a message has it; empty where none is. */
    default Object figure() {
        return "";
    }

    /** What is claimed to be in the food, as a message has it; empty where it is said by the message itself. */
    default Object nutrientName() {
        return "";
    }

    /** Whether something else must be named to compare with. */
    boolean needsReference();

    /**
     * So many times as much of a nutrient as the reference, in the same amount of food.
     *
     * @param times at least this; 1 for "more" or "less"
     * @param less whether less is claimed: reference ÷ product instead of product ÷ reference
     */
    record NutrientAmount(Nutrient nutrient, double times, boolean less) implements ContentClaimed {
        public NutrientAmount {
            if (!(times > 0 && times < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a multiple must be above zero and finite, not " + times);
            }
        }

        @Override
        public String id() {
            return nutrient.id();
        }

        @Override
        public String key() {
            return amount(times, less);
        }

        @Override
        public Object figure() {
            return new Figure(Claimed.number(times));
        }

        @Override
        public Object nutrientName() {
            return Message.of("nutrient." + nutrient.id());
        }

        @Override
        public boolean needsReference() {
            return true;
        }
    }

    /** Richer in unsaturated fat. No fatty acids are held, so that it cannot be checked yet. */
    record UnsaturatedFat(double times, boolean less) implements ContentClaimed {
        @Override
        public String id() {
            return UNSATURATED_FAT;
        }

        @Override
        public String key() {
            return amount(times, less);
        }

        @Override
        public Object figure() {
            return new Figure(Claimed.number(times));
        }

        @Override
        public Object nutrientName() {
            return Message.of("nutrient." + UNSATURATED_FAT);
        }

        @Override
        public boolean needsReference() {
            return true;
        }
    }

    /** Every indispensable amino acid is in the protein, however little. */
    record AllAminoAcids() implements ContentClaimed {
        @Override
        public String id() {
            return AMINO_ACIDS;
        }

        @Override
        public String key() {
            return "content-claim." + AMINO_ACIDS;
        }

        @Override
        public boolean needsReference() {
            return false;
        }
    }

    /** The protein has of every indispensable amino acid as much as a person needs: a score of at least 1. */
    record CompleteProtein() implements ContentClaimed {
        @Override
        public String id() {
            return COMPLETE_PROTEIN;
        }

        @Override
        public String key() {
            return "content-claim." + COMPLETE_PROTEIN;
        }

        @Override
        public boolean needsReference() {
            return false;
        }
    }

    /** The protein is as good as that of the reference, by a measured score of quality. */
    record ProteinAsGood() implements ContentClaimed {
        @Override
        public String id() {
            return PROTEIN_QUALITY;
        }

        @Override
        public String key() {
            return "content-claim." + PROTEIN_QUALITY;
        }

        @Override
        public boolean needsReference() {
            return true;
        }
    }

    private static String amount(double times, boolean less) {
        if (times == 1) {
            return less ? "content-claim.less" : "content-claim.more";
        }
        return less ? "content-claim.times-less" : "content-claim.times";
    }

    /** What can be claimed, by the ids of a question. */
    static List<String> ids() {
        return Stream.concat(
                        Stream.of(Nutrient.values())
                                .filter(nutrient -> nutrient != Nutrient.CARBOHYDRATE)
                                .map(Nutrient::id),
                        Stream.of(UNSATURATED_FAT, AMINO_ACIDS, COMPLETE_PROTEIN, PROTEIN_QUALITY))
                .toList();
    }

    /** The claim of an id; the multiple counts where an amount is claimed. */
    static Optional<ContentClaimed> of(String id, double times, boolean less) {
        return switch (id) {
            case UNSATURATED_FAT -> Optional.of(new UnsaturatedFat(times, less));
            case AMINO_ACIDS -> Optional.of(new AllAminoAcids());
            case COMPLETE_PROTEIN -> Optional.of(new CompleteProtein());
            case PROTEIN_QUALITY -> Optional.of(new ProteinAsGood());
            default ->
                Stream.of(Nutrient.values())
                        .filter(nutrient -> nutrient.id().equals(id) && nutrient != Nutrient.CARBOHYDRATE)
                        .findFirst()
                        .map(nutrient -> new NutrientAmount(nutrient, times, less));
        };
    }
}

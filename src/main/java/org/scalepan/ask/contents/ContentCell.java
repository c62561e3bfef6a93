package org.scalepan.ask.contents;

import java.util.Optional;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.claim.Verdict;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.words.Message;

/**
 * A claim of contents on one basis, of one form of the food.
 *
 * @param quantity what is counted: a nutrient, protein-corrected, diaas, pdcaas, amino-acid-score or indispensable-amino-acids
 * @param basis none where the quantity is a score
 * @param decidedByWater whether a dried food is weighed against a fresh one, so that drying alone decides; then it counts for no verdict
 * @param thin whether one sample stands for a side
 * @param times as it is claimed: product ÷ reference, or reference ÷ product where less is claimed
 */
public record ContentCell(
        ProductForm food,
        Optional<ProductForm> reference,
        String quantity,
        String unit,
        Optional<Basis> basis,
        boolean asked,
        boolean decidedByWater,
        boolean thin,
        Verdict verdict,
        Optional<SampleRatio> times,
        SideOfCell productSide,
        Optional<SideOfCell> referenceSide) {

    /**
     * One side.
     *
     * @param found what is published
     * @param missing why nothing is
     */
    public record SideOfCell(Optional<SampleRange> found, Optional<Message> missing) {
        static SideOfCell of(SampleRange found) {
            return new SideOfCell(Optional.of(found), Optional.empty());
        }

        static SideOfCell missing(Message why) {
            return new SideOfCell(Optional.empty(), Optional.of(why));
        }
    }

    /** Whether its verdict counts: water decides nothing about a food, unless that very weight was asked for. */
    boolean counts() {
        return asked || !decidedByWater;
    }
}

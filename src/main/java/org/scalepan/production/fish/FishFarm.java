package org.scalepan.production.fish;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import org.scalepan.factors.Product;
import org.scalepan.input.Obstacle;
import org.scalepan.production.FarmRecords;

/**
 * The records of a fish farm; only product and harvest are required, the rest may be open.
 *
 * @param product fish or other animals of the group
 * @param harvest fish sold live or killed in a year
 * @param stocked fry or fingerlings put in, in the same year
 */
@RecordBuilder
public record FishFarm(FarmRecords records, Product product, FishMass harvest, Optional<FishMass> stocked, Pond pond)
        implements FishFarmBuilder.With {

    /** Why the records of a fish farm cannot name co-products: what it gives is its harvest. */
    public static Optional<Obstacle> obstacleInCoProducts(FarmRecords records) {
        return records.coProducts().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Obstacle("co_products", "what a fish farm gives stands in harvest; leave co_products out"));
    }
}

package org.scalepan.production.records;

import java.util.function.UnaryOperator;
import org.scalepan.factors.Library;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.Inventory;
import org.scalepan.production.fish.FishFarm;
import org.scalepan.production.fish.FishInventory;
import org.scalepan.production.herd.Herd;
import org.scalepan.production.herd.HerdInventory;
import org.scalepan.production.insects.InsectFarm;
import org.scalepan.production.insects.InsectInventory;

/** A year's records of an insect farm, a herd or a fish farm, as they can be read again with one entry changed. */
public sealed interface EditableRecords {
    /** What all kinds of farm write down. */
    FarmRecords records();

    /** The same notebook with other records. */
    EditableRecords with(UnaryOperator<FarmRecords> change);

    /** What the records come to: the same as {@code POST /v1/footprint} counts. */
    Inventory inventory(Library library);

    /** An insect farm. */
    record Insects(InsectFarm farm) implements EditableRecords {
        @Override
        public FarmRecords records() {
            return farm.records();
        }

        @Override
        public Insects with(UnaryOperator<FarmRecords> change) {
            return new Insects(farm.withRecords(change.apply(farm.records())));
        }

        @Override
        public Inventory inventory(Library library) {
            return InsectInventory.inventory(library, farm);
        }
    }

    /** A fish farm. */
    record Fish(FishFarm farm) implements EditableRecords {
        @Override
        public FarmRecords records() {
            return farm.records();
        }

        @Override
        public Fish with(UnaryOperator<FarmRecords> change) {
            return new Fish(farm.withRecords(change.apply(farm.records())));
        }

        @Override
        public Inventory inventory(Library library) {
            return FishInventory.inventory(library, farm);
        }
    }

    /** A herd or flock. */
    record Animals(Herd herd) implements EditableRecords {
        @Override
        public FarmRecords records() {
            return herd.records();
        }

        @Override
        public Animals with(UnaryOperator<FarmRecords> change) {
            return new Animals(herd.withRecords(change.apply(herd.records())));
        }

        @Override
        public Inventory inventory(Library library) {
            return HerdInventory.inventory(library, herd);
        }
    }
}

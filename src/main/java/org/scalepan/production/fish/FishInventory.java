package org.scalepan.production.fish;

import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.FarmInventory;
import org.scalepan.production.Gap;
import org.scalepan.production.Inventory;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.Output;
import org.scalepan.production.Stage;
import org.scalepan.words.Message;

/** Computes the inventory of a fish farm: the farm's own records, the gases of the water, and what was put in to grow. */
public final class FishInventory {
    private final Library library;
    private final FishFarm farm;
    private final InventoryBuilder builder = new InventoryBuilder();

    private FishInventory(Library library, FishFarm farm) {
        this.library = library;
        this.farm = farm;
    }

    /** The inventory of a farm. */
    public static Inventory inventory(Library library, FishFarm farm) {
        return new FishInventory(library, farm).make();
    }

    private Inventory make() {
        FarmInventory books = new FarmInventory(library, farm.records(), builder);
        books.add(farm.records());
        new PondInventory(library, farm, builder).add();
        stocked();
        new FishBalances(library, farm, books, builder).add();
        return builder.inventory(farm.records().name(), output());
    }

    /** The young belong to what the farm gives; a hatchery that sells them is cut off, as that of chicks is. */
    private void stocked() {
        if (farm.stocked().isEmpty()) {
            builder.notCounted(Stage.ANIMALS, "stocked", Gap.ALL, Message.of("gap.stocked-not-said"));
        } else if (farm.stocked().get().kilograms() > 0) {
            builder.cutOff("stocked", Gap.ALL, Message.of("gap.hatchery"));
        }
    }

    private Output output() {
        return new Output(
                farm.product(),
                farm.product().defaultForm(),
                FunctionalUnit.KG_LIVE,
                farm.harvest().mass(),
                ActivityTerm.of(1),
                "none");
    }
}

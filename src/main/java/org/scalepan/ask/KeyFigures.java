package org.scalepan.ask;

import java.util.Map;
import java.util.TreeMap;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.Flow;
import org.scalepan.production.Flux;
import org.scalepan.production.Inventory;

/** The figures a grower knows the farm by: feed conversion and harvest per square metre. */
public final class KeyFigures {
    private KeyFigures() {}

    /** Figures by name, with their unit in the name; those that cannot be computed are left out. */
    public static Map<String, Double> of(Inventory inventory) {
        Map<String, Double> figures = new TreeMap<>();
        double output = inventory.output().amount();
        String per = inventory.output().per() == FunctionalUnit.KG_LIVE ? "live" : "product";
        put(figures, "feed_as_fed_kg_per_kg_" + per, total(inventory, Flux.FEED) / output);
        put(figures, "feed_dry_matter_kg_per_kg_" + per, total(inventory, Flux.FEED_DRY_MATTER) / output);
        put(figures, "energy_mj_per_kg_" + per, total(inventory, Flux.ENERGY) / output);
        double area = inventory.flows().stream()
                .filter(flow -> flow.stage() == org.scalepan.production.Stage.SITE)
                .mapToDouble(flow -> flow.term().central())
                .sum();
        if (area > 0) {
            figures.put("kg_" + per + "_per_m2_and_year", output / area);
        }
        return figures;
    }

    private static void put(Map<String, Double> figures, String name, double value) {
        if (value > 0) {
            figures.put(name, value);
        }
    }

    private static double total(Inventory inventory, Flux flux) {
        return inventory.flows().stream()
                .filter(flow -> flow.flux() == flux)
                .map(Flow::term)
                .mapToDouble(term -> term.central())
                .sum();
    }
}

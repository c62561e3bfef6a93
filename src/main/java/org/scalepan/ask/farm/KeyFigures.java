package org.scalepan.ask.farm;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.footprint.UnitChain;
import org.scalepan.production.Flow;
import org.scalepan.production.Flux;
import org.scalepan.production.Inventory;
import org.scalepan.production.Output;
import org.scalepan.production.Stage;

/** The figures a grower knows the farm by: feed conversion, protein conversion and harvest per square metre. */
public final class KeyFigures {
    private KeyFigures() {}

    /** Figures by name, with their unit in the name; those that cannot be computed are left out. */
    public static Map<String, Double> of(Library library, Inventory inventory) {
        Map<String, Double> figures = new TreeMap<>();
        double output = inventory.output().amount();
        String per = inventory.output().per() == FunctionalUnit.KG_LIVE ? "live" : "product";
        put(figures, "feed_as_fed_kg_per_kg_" + per, total(inventory, Flux.FEED) / output);
        if (knownOfAllFeed(inventory, Flux.FEED_DRY_MATTER)) {
            put(figures, "feed_dry_matter_kg_per_kg_" + per, total(inventory, Flux.FEED_DRY_MATTER) / output);
        }
        put(figures, "energy_mj_per_kg_" + per, total(inventory, Flux.ENERGY_ON_FARM) / output);
        double area = inventory.flows().stream()
                .filter(flow -> flow.stage() == Stage.SITE)
                .mapToDouble(flow -> flow.term().central())
                .sum();
        if (area > 0) {
            figures.put("kg_" + per + "_per_m2_and_year", output / area);
        }
        proteinConversion(library, inventory)
                .ifPresent(share -> put(figures, "protein_out_kg_per_kg_protein_in", share));
        return figures;
    }

    /**
     * kg crude protein of the product per kg crude protein of the feed that it answers for (N × 6.25 on both sides); known when the
     * protein of every ingredient and of the product is.
     */
    private static OptionalDouble proteinConversion(Library library, Inventory inventory) {
        double in = total(inventory, Flux.FEED_PROTEIN) * inventory.output().share();
        return in > 0 && knownOfAllFeed(inventory, Flux.FEED_PROTEIN)
                ? OptionalDouble.of(inventory.output().amount() * proteinShare(library, inventory.output()) / in)
                : OptionalDouble.empty();
    }

    /** A figure of some of the feed would pass for a figure of all of it. */
    private static boolean knownOfAllFeed(Inventory inventory, Flux flux) {
        return flows(inventory, flux).count() >= flows(inventory, Flux.FEED).count();
    }

    /** kg crude protein per unit of the output; 0 when the way there is not known. */
    private static double proteinShare(Library library, Output output) {
        UnitChain chain = output.chain(library, ProteinBasis.CRUDE, true);
        if (chain.path(output.per(), FunctionalUnit.KG_PROTEIN) instanceof ChainPath.FoundPath found) {
            return 1 / found.steps().stream().mapToDouble(ChainStep::multiplier).reduce(1, (a, b) -> a * b);
        }
        return 0;
    }

    private static void put(Map<String, Double> figures, String name, double value) {
        if (value > 0) {
            figures.put(name, value);
        }
    }

    private static double total(Inventory inventory, Flux flux) {
        return flows(inventory, flux).mapToDouble(flow -> flow.term().central()).sum();
    }

    private static Stream<Flow> flows(Inventory inventory, Flux flux) {
        return inventory.flows().stream().filter(flow -> flow.flux() == flux);
    }
}

package org.scalepan.production;

import java.util.Optional;
import org.scalepan.factors.IpccRow;
import org.scalepan.production.IpccTables.Where;
import org.scalepan.words.Message;

/**
 * Adds direct and indirect nitrous oxide from nitrogen in manure or frass to the inventory: IPCC volume 4, chapter 10, equations 10.25 to
 * 10.29, and chapter 11, equations 11.1, 11.9 and 11.10.
 */
public final class NitrousOxide {
    /** kg N2O per kg N2O-N. */
    private static final double TO_N2O = 44.0 / 28.0;

    private final IpccTables tables;
    private final InventoryBuilder builder;
    private final String what;
    private final String climate;

    /**
     * @param what what the nitrogen is in, for the lines of the inventory
     * @param climate a climate of the tables, which selects the soil factors; {@code any-climate} when it is not known
     */
    public NitrousOxide(IpccTables tables, InventoryBuilder builder, String what, String climate) {
        this.tables = tables;
        this.builder = builder;
        this.what = what;
        this.climate = climate;
    }

    /**
     * Nitrogen stored in a manure system.
     *
     * @param nitrogen kg N a year
     */
    public void stored(ActivityTerm nitrogen, Where where) {
        Optional<IpccRow> direct = tables.find("ef3", where);
        if (direct.isEmpty()) {
            builder.notCounted(Stage.MANURE, "manure/" + where.system(), Gap.GHG, Message.of("gap.no-n2o"));
            return;
        }
        ActivityTerm stored = nitrogen.times(tables.factor(direct.get()));
        add(
                "stored",
                tables.uncertainty("uncertainty-ef3", direct.get().id())
                        .map(stored::times)
                        .orElse(stored));
        tables.find("frac-gas-ms", where)
                .map(tables::factor)
                .ifPresent(share -> add("volatilised", nitrogen.times(share).times(soil("ef4", "volatilised"))));
        tables.find("frac-leach-ms", where)
                .map(tables::factor)
                .ifPresent(share -> add("leached", nitrogen.times(share).times(soil("ef5", "leached"))));
    }

    /** Nitrogen applied to a field. */
    public void spread(ActivityTerm nitrogen) {
        add("spread", nitrogen.times(soil("ef1", "organic")));
        onSoil(nitrogen);
    }

    /**
     * Nitrogen excreted while grazing or scavenging.
     *
     * @param input the row of table 11.1: cattle, poultry and pigs, or sheep and other animals
     */
    public void dropped(ActivityTerm nitrogen, String input) {
        add("dropped", nitrogen.times(soil("ef3-prp", input)));
        onSoil(nitrogen);
    }

    /**
     * Mineral nitrogen that is not applied to a field, because what is spread there replaces it: what it would have given off is a credit,
     * by the same tables and paths.
     *
     * @param nitrogen kg N a year that is replaced
     */
    public void replaced(ActivityTerm nitrogen) {
        ActivityTerm less = nitrogen.times(-1);
        avoid("in the field", less.times(soil("ef1", "synthetic")));
        avoid("volatilised", less.times(soil("frac-gasf", "synthetic")).times(soil("ef4", "volatilised")));
        if (leaches()) {
            avoid("leached", less.times(soil("frac-leach", "all")).times(soil("ef5", "leached")));
        }
    }

    private void avoid(String how, ActivityTerm nitrogenKept) {
        builder.flow(Stage.CREDIT, "fertiliser replaced, " + how, Flux.N2O, nitrogenKept.times(TO_N2O));
    }

    private void onSoil(ActivityTerm nitrogen) {
        add(
                "volatilised",
                nitrogen.times(soil("frac-gasm", "organic-and-grazing")).times(soil("ef4", "volatilised")));
        if (leaches()) {
            add("leached", nitrogen.times(soil("frac-leach", "all")).times(soil("ef5", "leached")));
        }
    }

    /** In a dry climate the guidelines count no leaching (table 11.3). */
    private boolean leaches() {
        return !Moisture.of(climate).equals(Optional.of(Moisture.DRY));
    }

    private Factor soil(String quantity, String input) {
        return tables.soil(quantity, input, climate);
    }

    private void add(String how, ActivityTerm nitrogenLost) {
        builder.flow(Stage.MANURE, what + ", " + how, Flux.N2O, nitrogenLost.times(TO_N2O));
    }
}

package org.scalepan.production;

import java.util.Optional;
import org.scalepan.factors.IpccRow;
import org.scalepan.production.IpccTables.Where;

/**
 * Books nitrous oxide from nitrogen in manure or frass, direct and indirect: IPCC volume 4, chapter 10, equations 10.25 to 10.29, and
 * chapter 11, equations 11.1, 11.9 and 11.10.
 */
public final class NitrousOxide {
    /** kg N2O per kg N2O-N. */
    private static final double TO_N2O = 44.0 / 28.0;

    private final IpccTables tables;
    private final Ledger ledger;
    private final String what;

    /**
     * @param what what the nitrogen is in, for the lines of the inventory
     */
    public NitrousOxide(IpccTables tables, Ledger ledger, String what) {
        this.tables = tables;
        this.ledger = ledger;
        this.what = what;
    }

    /**
     * Nitrogen kept in a manure system.
     *
     * @param nitrogen kg N a year
     */
    public void stored(Term nitrogen, Where where) {
        Optional<IpccRow> direct = tables.find("ef3", where);
        if (direct.isEmpty()) {
            ledger.gap("manure/" + where.system(), "N2O not counted: no direct factor for this system in the tables");
            return;
        }
        Term stored = nitrogen.times(tables.factor(direct.get()));
        add(
                "stored",
                tables.uncertainty("uncertainty-ef3", direct.get().id())
                        .map(stored::times)
                        .orElse(stored));
        tables.find("frac-gas-ms", where)
                .map(tables::factor)
                .ifPresent(share -> add("volatilised", nitrogen.times(share).times(tables.soil("ef4", "volatilised"))));
        tables.find("frac-leach-ms", where)
                .map(tables::factor)
                .ifPresent(share -> add("leached", nitrogen.times(share).times(tables.soil("ef5", "leached"))));
    }

    /** Nitrogen brought to a field, counted as one where rain leaches. */
    public void spread(Term nitrogen) {
        add("spread", nitrogen.times(tables.soil("ef1", "all")));
        onSoil(nitrogen, true);
    }

    /**
     * Nitrogen dropped while grazing or scavenging.
     *
     * @param input the row of table 11.1: cattle, poultry and pigs, or sheep and other animals
     * @param leaches false in a dry climate, where the guidelines count no leaching (table 11.3)
     */
    public void dropped(Term nitrogen, String input, boolean leaches) {
        add("dropped", nitrogen.times(tables.soil("ef3-prp", input)));
        onSoil(nitrogen, leaches);
    }

    private void onSoil(Term nitrogen, boolean leaches) {
        add(
                "volatilised",
                nitrogen.times(tables.soil("frac-gasm", "organic-and-grazing"))
                        .times(tables.soil("ef4", "volatilised")));
        if (leaches) {
            add("leached", nitrogen.times(tables.soil("frac-leach", "all")).times(tables.soil("ef5", "leached")));
        }
    }

    private void add(String how, Term nitrogenLost) {
        ledger.flow(Stage.MANURE, what + ", " + how, Flux.N2O, nitrogenLost.times(TO_N2O));
    }
}

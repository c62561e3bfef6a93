package org.scalepan.production;

import java.util.List;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.FunctionalUnit;

/**
 * The basis on which an inventory is summed.
 *
 * @param credit whether the credit for replaced fertiliser is taken off
 * @param landUseChange whether emissions of land-use change are asked for
 */
public record Scope(
        Indicator indicator,
        FunctionalUnit per,
        Boundary boundary,
        WarmingSet gwp,
        boolean credit,
        boolean landUseChange) {
    /** Without emissions of land-use change. */
    public Scope(Indicator indicator, FunctionalUnit per, Boundary boundary, WarmingSet gwp, boolean credit) {
        this(indicator, per, boundary, gwp, credit, false);
    }

    /** The indicators that can be computed from the records of a farm or herd. */
    public static final List<String> INDICATORS =
            List.of("ghg", "land", "feed", "feed-dry-matter", "energy", "energy-on-farm", "water", "water-on-farm");

    /** Those that are computed where a question names none. */
    public static final List<String> USUAL_INDICATORS = List.of("ghg", "land", "feed", "energy", "water");

    /** The boundaries that records can cover: no farm records what happens on the way to a shop. */
    public static final List<Boundary> BOUNDARIES =
            List.of(Boundary.ANIMAL, Boundary.FARM_GATE, Boundary.PROCESSING_GATE);

    /** The boundary of records in a question that by default would end at {@code usual}: records end at a gate. */
    public static Boundary boundaryOfRecords(Boundary usual) {
        return BOUNDARIES.contains(usual) ? usual : Boundary.FARM_GATE;
    }

    /** Whether a flow counts here. */
    boolean counts(Flow flow) {
        if (!flow.flux().indicator().equals(indicator.id())) {
            return false;
        }
        // Feed indicators count feed, whichever boundary is asked for.
        boolean inside =
                boundary.includes(flow.stage().boundary()) || (flow.stage() == Stage.FEED && indicator.isFeed());
        return inside && (credit || flow.stage() != Stage.CREDIT);
    }

    /** The characterisation factor of a flux on this basis: kg CO2e per kg for a gas, 1 otherwise. */
    double weight(Flux flux) {
        return flux.gas().map(gwp::potential).orElse(1.0);
    }
}

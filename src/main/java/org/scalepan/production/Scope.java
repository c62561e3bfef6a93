package org.scalepan.production;

import java.util.List;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.FunctionalUnit;

/**
 * On which basis an inventory is added up.
 *
 * @param credit whether the credit for replaced fertiliser is taken off
 */
public record Scope(Indicator indicator, FunctionalUnit per, Boundary boundary, WarmingSet gwp, boolean credit) {
    /** The indicators that the records of a farm or herd can answer. */
    public static final List<String> INDICATORS = List.of("ghg", "land", "feed", "feed-dry-matter", "energy", "water");

    /** Those that are answered where a question names none. */
    public static final List<String> USUAL_INDICATORS = List.of("ghg", "land", "feed", "energy", "water");

    /** The boundaries up to which records can be added up: what happens on the way to a shop, no farm writes down. */
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
        // Feed conversion is about feed, whichever boundary is asked.
        boolean inside =
                boundary.includes(flow.stage().boundary()) || (flow.stage() == Stage.FEED && indicator.isFeed());
        return inside && (credit || flow.stage() != Stage.CREDIT);
    }

    /** What one unit of a flux weighs under this basis: kg CO2e per kg for a gas, 1 otherwise. */
    double weight(Flux flux) {
        return flux.gas().map(gwp::potential).orElse(1.0);
    }
}

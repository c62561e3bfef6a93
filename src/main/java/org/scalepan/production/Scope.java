package org.scalepan.production;

import org.scalepan.factors.Indicator;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.FunctionalUnit;

/**
 * On which ruler an inventory is added up.
 *
 * @param credit whether the credit for replaced fertiliser is taken off
 */
public record Scope(Indicator indicator, FunctionalUnit per, String boundary, WarmingSet gwp, boolean credit) {

    /** Whether a flow counts here. */
    boolean counts(Flow flow) {
        if (!flow.flux().indicator().equals(indicator.id())) {
            return false;
        }
        return switch (flow.stage()) {
            case CREDIT -> credit && !boundary.equals("animal");
            case PROCESSING -> boundary.equals("processing-gate");
            case ANIMALS, MANURE -> true;
            // Feed conversion is about feed, whichever boundary is asked.
            case FEED -> !boundary.equals("animal") || indicator.id().startsWith("feed");
            default -> !boundary.equals("animal");
        };
    }

    /** What one unit of a flux weighs under this ruler: kg CO2e per kg for a gas, 1 otherwise. */
    double weight(Flux flux) {
        return flux.gas().map(gwp::potential).orElse(1.0);
    }
}

package org.scalepan.production;

import java.util.Optional;
import org.scalepan.factors.Gas;

/** What a flow adds to. Gases stay separate, so that any warming set can be applied afterwards. */
public enum Flux {
    CO2("ghg", Gas.CO2),
    CH4_BIOGENIC("ghg", Gas.CH4_BIOGENIC),
    CH4_FOSSIL("ghg", Gas.CH4_FOSSIL),
    N2O("ghg", Gas.N2O),
    /** kg CO2e where the source does not give the gases apart; it stays under the source's warming set. */
    CO2E("ghg", null),
    LAND("land", null),
    /** MJ primary energy, of all kinds. */
    ENERGY("energy", null),
    /** MJ at the farm's own meters: electricity as delivered, fuel by its heat. */
    ENERGY_ON_FARM("energy-on-farm", null),
    WATER("water", null),
    /** m3 that the farm itself draws. */
    WATER_ON_FARM("water-on-farm", null),
    FEED("feed", null),
    FEED_DRY_MATTER("feed-dry-matter", null),
    /** kg crude protein in the feed: no indicator of its own, but a figure growers know their animals by. */
    FEED_PROTEIN("feed-protein", null);

    private final String indicator;
    private final Optional<Gas> gas;

    Flux(String indicator, @org.jspecify.annotations.Nullable Gas gas) {
        this.indicator = indicator;
        this.gas = Optional.ofNullable(gas);
    }

    /** The indicator that this flux counts for. */
    public String indicator() {
        return indicator;
    }

    /** The gas, when this flux is one. */
    public Optional<Gas> gas() {
        return gas;
    }
}

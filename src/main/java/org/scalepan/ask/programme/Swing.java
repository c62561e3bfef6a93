package org.scalepan.ask.programme;

import org.scalepan.footprint.Bound;
import org.scalepan.uncertainty.Summary;

/**
 * The result of a programme with one driver changed and everything else as asked.
 *
 * @param setting what the driver is set to, in words
 * @param asAsked whether that is what was asked anyway
 * @param avoided a year
 * @param bound whether that is a bound
 */
public record Swing(Driver driver, String setting, boolean asAsked, Summary avoided, Bound bound) {

    /** The assumptions to which a result is most sensitive and which a reader may question. */
    public enum Driver {
        DISPLACEMENT_RATE("displacement-rate", "displacement rate"),
        BASELINE("baseline", "all that is displaced is"),
        PRODUCT_FOOTPRINT("product-footprint", "footprint of the product");

        private final String id;
        private final String words;

        Driver(String id, String words) {
            this.id = id;
            this.words = words;
        }

        public String id() {
            return id;
        }

        public String words() {
            return words;
        }
    }
}

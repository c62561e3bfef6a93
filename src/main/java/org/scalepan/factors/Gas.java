package org.scalepan.factors;

import java.util.Optional;
import java.util.stream.Stream;

/** A greenhouse gas as the warming sets distinguish them. Respired CO2 is never counted; {@link #CO2} is fossil or from land-use change. */
public enum Gas {
    CO2("co2"),
    CH4_BIOGENIC("ch4-biogenic"),
    CH4_FOSSIL("ch4-fossil"),
    N2O("n2o");

    private final String id;

    Gas(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    public static Optional<Gas> of(String id) {
        return Stream.of(values()).filter(gas -> gas.id.equals(id)).findFirst();
    }
}

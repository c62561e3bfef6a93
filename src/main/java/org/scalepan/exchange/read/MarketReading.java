package org.scalepan.exchange.read;

import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;

/** Reads the market whose food and feed law applies to a question. */
public final class MarketReading {
    private MarketReading() {}

    /** The market, if given. */
    public static Optional<String> market(Library library, Input parameters) {
        return parameters.raw("market").map(id -> parameters.oneOf("market", library.ids("markets"), id));
    }
}

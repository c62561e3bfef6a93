package org.scalepan.web.read;

import java.util.Optional;
import org.scalepan.factors.Library;

/** Reads the market whose food and feed law a question asks about. */
public final class MarketReading {
    private MarketReading() {}

    /** The market asked for, if any. */
    public static Optional<String> market(Library library, Input parameters) {
        return parameters.raw("market").map(id -> parameters.oneOf("market", library.ids("markets"), id));
    }
}

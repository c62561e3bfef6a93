package org.scalepan.exchange.read;

import java.util.List;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.production.Scope;

/** Reads the one indicator and the one comparison basis of a question whose sides may be farms and herds. */
public final class CommonBasis {
    private final Library library;
    private final Input body;
    private final boolean recorded;

    /**
     * @param recorded whether a side is computed from records, which have a nearer system boundary and fewer indicators
     */
    public CommonBasis(Library library, Input body, boolean recorded) {
        this.library = library;
        this.body = body;
        this.recorded = recorded;
    }

    /** The indicator; greenhouse gases by default. */
    public Indicator indicator() {
        List<String> known =
                recorded ? Scope.INDICATORS : List.copyOf(library.indicators().keySet());
        String id = body.oneOf("indicator", known).orElse("ghg");
        return java.util.Objects.requireNonNull(library.indicators().get(id));
    }

    /** Reads the comparison basis and the sampling; with records on a side, a default boundary at retail becomes the farm gate. */
    public ComparisonBasisReading basis() {
        return ComparisonBasisReading.of(library, body, recorded).inBody();
    }
}

package org.scalepan.web;

import java.util.List;
import org.scalepan.ask.Ruler;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.production.Scope;

/** Reads the one indicator and the one ruler of a question whose sides may be farms and herds. */
final class OneRuler {
    private final Library library;
    private final Body body;
    private final boolean recorded;

    /**
     * @param recorded whether a side is computed from records, which end at a gate and know fewer indicators
     */
    OneRuler(Library library, Body body, boolean recorded) {
        this.library = library;
        this.body = body;
        this.recorded = recorded;
    }

    /** The indicator asked for; greenhouse gases unless it is told. */
    Indicator indicator() {
        List<String> known =
                recorded ? Scope.INDICATORS : List.copyOf(library.indicators().keySet());
        String id = body.oneOf("indicator", known).orElse("ghg");
        return java.util.Objects.requireNonNull(library.indicators().get(id));
    }

    /** The fields of the ruler and the sampling. */
    Parameters scalars() {
        return BodyScalars.of(body, recorded ? Boundary.ids(Scope.BOUNDARIES) : Boundary.ids());
    }

    /** The ruler; where records are on it, what by default would end at retail ends at the farm gate. */
    Ruler ruler(Parameters scalars, Indicator indicator) {
        Ruler ruler = new RulerReading(library, scalars).ruler(indicator);
        if (!recorded) {
            return ruler;
        }
        Boundary boundary = Scope.boundaryOfRecords(ruler.boundary());
        scalars.resolve("boundary", boundary.id());
        return ruler.endingAt(boundary);
    }
}

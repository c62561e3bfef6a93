package org.scalepan.production;

import java.util.List;
import java.util.Optional;

/**
 * One line of an inventory: an amount of a flux a year, from one stage.
 *
 * @param what what it comes from, in the words of the records
 * @param term the amount a year in the flux's unit
 * @param warmingSet for {@link Flux#CO2E}: the set of the source
 * @param rows the rows of the library it rests on
 */
public record Flow(
        Stage stage, String what, Flux flux, ActivityTerm term, Optional<String> warmingSet, List<String> rows) {
    public Flow {
        rows = List.copyOf(rows);
    }
}

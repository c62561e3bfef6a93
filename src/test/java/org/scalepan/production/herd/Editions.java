package org.scalepan.production.herd;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.scalepan.Libraries;
import org.scalepan.factors.IpccRow;
import org.scalepan.production.Flow;
import org.scalepan.production.Inventory;

/** Which edition of the guidelines each row of the tables belongs to. */
final class Editions {
    private static final Map<String, String> OF_ROW = new HashMap<>();

    static {
        Libraries.bundled().ipcc().stream()
                // What 2019 does not restate of uncertainty stays as 2006 has it.
                .filter(row -> !row.quantity().startsWith("uncertainty-"))
                .forEach(row -> OF_ROW.put(row.id(), row.edition()));
        Libraries.bundled().table("soil_n2o").rows().forEach(row -> OF_ROW.put(row.text("id"), row.text("edition")));
        assertFalse(Libraries.bundled().ipcc().stream()
                        .map(IpccRow::edition)
                        .distinct()
                        .count()
                < 2);
    }

    private Editions() {}

    /** Fails where a line rests on another edition, or on no row at all; and where nothing is counted without saying so. */
    static void assertUnmixed(Inventory inventory, String edition, String what) {
        boolean reported = inventory.gaps().stream()
                .anyMatch(gap -> gap.filledWith().startsWith("not counted: no")
                        || gap.filledWith().startsWith("CH4 not counted: no"));
        assertTrue(reported || !inventory.flows().isEmpty(), what);
        for (Flow flow : inventory.flows()) {
            long known = flow.rows().stream().filter(OF_ROW::containsKey).count();
            assertFalse(
                    known == 0 && flow.flux().gas().isPresent(),
                    () -> what + ": no row behind " + flow.what() + flow.rows());
            for (String row : flow.rows()) {
                assertEquals(
                        edition, OF_ROW.getOrDefault(row, edition), () -> what + ": " + row + " in " + flow.what());
            }
        }
    }
}

package org.scalepan;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A test that reads a field which an answer does not have fails. */
@AnalyzeClasses(packages = "org.scalepan", importOptions = MissingFieldTest.Tests.class)
class MissingFieldTest {
    /** What is compiled to where this class is. */
    static final class Tests implements ImportOption {
        private static final String FOLDER =
                JsonAt.class.getProtectionDomain().getCodeSource().getLocation().getPath();

        @Override
        public boolean includes(Location location) {
            return location.contains(FOLDER);
        }
    }

    /** Of a missing node these give 0, "" or false. A default that the call names is seen by who reads the test. */
    private static final String WITHOUT_DEFAULT =
            "as(Text|Double|Int|Long|Boolean)|(double|int|long|float|boolean|text|number)Value";

    @ArchTest
    static final ArchRule fields_of_answers_are_read_by_what_fails_when_they_are_missing = noClasses()
            .that()
            .doNotBelongToAnyOf(JsonAt.class)
            .should()
            .accessTargetWhere(describe("value of a JSON node without a default", MissingFieldTest::hasNoDefault))
            .because("a missing number would be read as 0; JsonAt fails instead");

    private static boolean hasNoDefault(JavaAccess<?> access) {
        return access.getTarget() instanceof CodeUnitAccessTarget called
                && called.getOwner().isAssignableTo(JsonNode.class)
                && called.getRawParameterTypes().isEmpty()
                && called.getName().matches(WITHOUT_DEFAULT);
    }

    private static JsonNode answer() throws Exception {
        return new ObjectMapper().readTree("""
                {"footprint": {"median": 6.9, "unit": "kg CO2e per kg protein", "low": null}, "studies": 3, "notes": ["a"]}
                """);
    }

    @Test
    void what_is_there_is_read() throws Exception {
        assertEquals(6.9, JsonAt.number(answer(), "/footprint/median"));
        assertEquals("kg CO2e per kg protein", JsonAt.text(answer(), "/footprint/unit"));
        assertEquals(3, JsonAt.integer(answer(), "/studies"));
        assertEquals("3", JsonAt.scalar(answer(), "/studies"));
        assertEquals(List.of("a"), JsonAt.texts(answer(), "/notes"));
    }

    @Test
    void what_is_missing_null_or_of_another_kind_fails_the_test_and_is_named() throws Exception {
        JsonNode answer = answer();

        AssertionError missing = assertThrows(AssertionError.class, () -> JsonAt.number(answer, "/median"));
        assertEquals("expected a number at /median, found nothing in " + answer, missing.getMessage());
        assertThrows(AssertionError.class, () -> JsonAt.node(answer, "/footprint/low"));
        assertThrows(AssertionError.class, () -> JsonAt.number(answer, "/footprint/low"));
        assertThrows(AssertionError.class, () -> JsonAt.text(answer, "/studies"));
        assertThrows(AssertionError.class, () -> JsonAt.integer(answer, "/footprint/median"));
        assertThrows(AssertionError.class, () -> JsonAt.array(answer, "/footprint"));
    }
}

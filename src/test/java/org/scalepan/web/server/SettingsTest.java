package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command line is read as strictly as a request. */
class SettingsTest {
    private static Settings.SettingsReading read(String... arguments) {
        return Settings.read(List.of(arguments), Map.of());
    }

    @ParameterizedTest
    @ValueSource(strings = {"+80", "٨٠٨٠", "-1", "65536", "008080", "80 ", "", "eighty"})
    void a_port_is_one_to_five_plain_digits(String port) {
        assertInstanceOf(Settings.SettingsReading.InvalidSettings.class, read("--port", port));
    }

    @Test
    void the_largest_port_is_accepted() {
        Settings.SettingsReading.Ready ready =
                assertInstanceOf(Settings.SettingsReading.Ready.class, read("--port", "65535"));
        assertEquals(65_535, ready.settings().port());
    }

    @Test
    void an_option_is_not_the_value_of_another() {
        Settings.SettingsReading.InvalidSettings wrong =
                assertInstanceOf(Settings.SettingsReading.InvalidSettings.class, read("--host", "--port", "9000"));
        assertEquals("--host needs a value", wrong.faults().get(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--factors=", "--factors= "})
    void a_blank_folder_is_refused_and_not_ignored(String option) {
        assertInstanceOf(Settings.SettingsReading.InvalidSettings.class, read(option));
    }
}

package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.Reply;

/** A process on a machine with other settings answers the same. */
class OtherLocaleIT {
    /** A picture, sentences with numbers, and gaps with defaults. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "-Duser.language=ar -Duser.country=EG",
                "-Duser.language=de -Duser.country=DE -Duser.timezone=Pacific/Apia -Dfile.encoding=ISO-8859-1"
            })
    void the_locale_and_the_time_zone_of_the_machine_change_no_byte(String language) {
        String brief = "/v1/brief?products=mealworm,house-cricket&against=beef&draws=1000&format=";
        List<String> questions = List.of(
                brief + "svg",
                brief + "md",
                brief + "html",
                "/v1/comparison?products=mealworm,chicken&against=beef&draws=1000",
                "/v1/comparison?products=mealworm&against=beef&draws=1000&format=md",
                "/v1/comparison?products=mealworm&against=beef&draws=1000&format=xlsx",
                "/v1/library.zip",
                "/v1/claim?text=insects%20emit%20a%20hundred%20times%20less%20than%20beef&draws=1000");
        List<String> records = List.of("""
                {"system": {"kind": "insects", "product": "palm-weevil", "harvest": {"kg_per_year": 500},
                  "feed": [{"ingredient": "wheat-bran", "kg": 2000, "burden": "mass"}, {"ingredient": "carrot", "kg": 300}]}, "draws": 1000}
                """, """
                {"system": {"kind": "herd", "animals": "dairy-cattle", "heads": 10, "breeding_stock": "included",
                  "yield": {"milk_kg": 20000, "live_kg": 900},
                  "cattle": {"weight_kg": 400, "milk_kg_per_day": 12, "digestibility_percent": 60}}, "draws": 1000}
                """);

        try (SecondProcess elsewhere = new SecondProcess(language.split(" "))) {
            for (String question : questions) {
                assertEquals(
                        Reply.to(question).body(),
                        Reply.to(elsewhere.uri(question), Map.of()).body());
            }
            for (String farm : records) {
                assertEquals(
                        Reply.to("/v1/footprint", Map.of(), Optional.of(farm)).body(),
                        Reply.to(elsewhere.uri("/v1/footprint"), Map.of(), Optional.of(farm))
                                .body());
            }
        }
    }
}

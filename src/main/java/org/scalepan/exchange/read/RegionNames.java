package org.scalepan.exchange.read;

import java.util.Collection;
import java.util.IllformedLocaleException;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import org.scalepan.factors.Region;

/** What people call a region: its id, its name, and of a country the codes of ISO 3166-1 with two or three letters. */
final class RegionNames {
    /** Short names and reserved codes that people type. */
    private static final Map<String, String> ALSO = Map.of("uk", "GBR");

    private RegionNames() {}

    static Optional<Region> find(Collection<Region> regions, String typed) {
        String wanted = plain(typed);
        return regions.stream()
                .filter(region -> plain(region.id()).equals(wanted)
                        || plain(region.name()).equals(wanted))
                .findFirst()
                .or(() ->
                        byCode(regions, ALSO.getOrDefault(wanted, typed.strip().toUpperCase(Locale.ROOT))));
    }

    private static Optional<Region> byCode(Collection<Region> regions, String code) {
        String three = code.length() == 2 ? threeLetters(code) : code;
        return regions.stream()
                .filter(region -> region.iso3().filter(three::equals).isPresent())
                .findFirst();
    }

    private static String threeLetters(String two) {
        try {
            return new Locale.Builder().setRegion(two).build().getISO3Country();
        } catch (MissingResourceException | IllformedLocaleException e) {
            return "";
        }
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ').strip();
    }
}

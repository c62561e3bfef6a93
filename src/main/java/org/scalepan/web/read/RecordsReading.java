package org.scalepan.web.read;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.scalepan.factors.Library;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.FarmRecords.Burden;
import org.scalepan.production.FarmRecords.CoProduct;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.FarmRecords.MaterialUse;
import org.scalepan.production.FarmRecords.OwnFactors;
import org.scalepan.production.FarmRecords.Site;
import org.scalepan.production.FarmRecords.TransportUse;
import org.scalepan.web.http.Limits;

/** Reads what every farm's records have: feed, energy, water, transport, materials, area, co-products. */
final class RecordsReading {
    private static final double MOST = 1e12;
    /** kg CO2e per kWh; no fuel burnt in any plant comes near it. */
    static final double MOST_GRID = 10;

    private final Library library;

    RecordsReading(Library library) {
        this.library = library;
    }

    FarmRecords read(Input body, String usualName) {
        return new FarmRecords(
                body.text("name").orElse(usualName),
                body.oneOf("region", RecordVocabulary.of(library).regions()),
                year(body),
                body.objects("feed", Limits.ENTRIES).stream().map(this::feed).toList(),
                body.objects("energy", Limits.ENTRIES).stream()
                        .map(this::energy)
                        .toList(),
                body.number("water_m3", 0, MOST),
                body.objects("transport", Limits.ENTRIES).stream()
                        .map(this::transport)
                        .toList(),
                body.objects("materials", Limits.ENTRIES).stream()
                        .map(this::material)
                        .toList(),
                body.number("building_m2", 0, MOST),
                body.number("yard_m2", 0, MOST),
                body.objects("co_products", 20).stream()
                        .map(RecordsReading::coProduct)
                        .toList(),
                body.number("grid_ghg_per_kwh", 0, MOST_GRID),
                FarmRecords.LISTS.stream().filter(body::isEmptyList).collect(Collectors.toUnmodifiableSet()));
    }

    private static OptionalInt year(Input body) {
        OptionalDouble given = body.number("year", 1990, 2100);
        if (given.isEmpty()) {
            return OptionalInt.empty();
        }
        double year = given.getAsDouble();
        if (year != Math.rint(year)) {
            body.fault("year", "year must be a whole number");
        }
        return OptionalInt.of((int) year);
    }

    private FeedUse feed(Input body) {
        String ingredient =
                body.needOneOf("ingredient", library.ids("ingredients")).orElse("");
        double kilograms = body.needNumber("kg", 0, MOST);
        OptionalDouble moisture = body.number("moisture", 0, 0.99);
        Optional<Burden> burden = body.oneOf("burden", List.of("economic", "mass", "burden-free", "displaced"))
                .flatMap(Burden::of);
        Optional<String> displaces = body.oneOf("displaces", library.ids("ingredients"));
        OptionalDouble displaced = body.number("displaced_kg_per_kg", 0, 100);
        if (burden.filter(Burden.DISPLACED::equals).isPresent() != displaces.isPresent()) {
            body.fault("displaces", "displaces goes with burden displaced: name the ingredient used instead");
        }
        OwnFactors own = new OwnFactors(
                body.number("ghg_per_kg", -1000, 1000),
                body.number("land_per_kg", 0, 10_000),
                body.number("energy_per_kg", 0, 10_000),
                body.number("water_per_kg", 0, 10_000));
        body.close();
        return new FeedUse(ingredient, kilograms, moisture, burden, displaces, displaced, own);
    }

    private EnergyUse energy(Input body) {
        String carrier =
                body.needOneOf("carrier", library.ids("energy_carriers")).orElse("");
        double amount = body.needNumber("amount", 0, MOST);
        Optional<Site> site = body.oneOf("for", List.of("farm", "processing"))
                .map(name -> Site.valueOf(name.toUpperCase(Locale.ROOT)));
        body.close();
        return new EnergyUse(carrier, amount, site);
    }

    private TransportUse transport(Input body) {
        String mode = body.needOneOf("mode", library.ids("transport_modes")).orElse("");
        double work = body.needNumber("tonne_km", 0, MOST);
        body.close();
        return new TransportUse(mode, work);
    }

    private MaterialUse material(Input body) {
        String material = body.needOneOf("material", library.ids("materials")).orElse("");
        double kilograms = body.needNumber("kg", 0, MOST);
        OptionalDouble years = body.number("years", 0.01, 1000);
        body.close();
        return new MaterialUse(material, kilograms, years);
    }

    private static CoProduct coProduct(Input body) {
        String name = body.text("name").orElse("co-product");
        double kilograms = body.needNumber("kg", 0, MOST);
        OptionalDouble price = body.number("price_per_kg", 0, MOST);
        body.close();
        return new CoProduct(name, kilograms, price);
    }
}

package org.scalepan.production.records;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.Region;
import org.scalepan.factors.table.Row;

/**
 * The names of the library that records may use, collected once, each set in the order of its table.
 *
 * @param ingredientNames ids of ingredients by their names and aliases in small letters
 */
record RecordVocabulary(
        Set<String> insects,
        Set<String> fish,
        Set<String> regions,
        Set<String> ipccRegions,
        Set<String> climates,
        Set<String> manureSystems,
        Set<String> ingredients,
        Map<String, String> ingredientNames,
        Set<String> energyCarriers,
        Set<String> transportModes,
        Set<String> materials) {

    static RecordVocabulary of(Library library) {
        return library.view(RecordVocabulary.class, RecordVocabulary::read);
    }

    private static RecordVocabulary read(Library library) {
        Collection<Product> products = library.products().values();
        return new RecordVocabulary(
                ofGroup(products, "insect"),
                ofGroup(products, "fish"),
                ordered(library.regions().all().stream().map(Region::id).toList()),
                terms(library, "ipcc-region", "ipcc."),
                terms(library, "climate", ""),
                terms(library, "manure-system", "mms."),
                ordered(library.ids("ingredients")),
                ingredientNames(library),
                ordered(library.ids("energy_carriers")),
                ordered(library.ids("transport_modes")),
                ordered(library.ids("materials")));
    }

    private static Set<String> ofGroup(Collection<Product> products, String group) {
        return ordered(products.stream()
                .filter(product -> product.group().equals(group))
                .map(Product::id)
                .toList());
    }

    private static Set<String> terms(Library library, String kind, String prefix) {
        return ordered(library.table("ipcc_terms").rows().stream()
                .filter(row -> row.text("kind").equals(kind))
                .map(row -> row.text("id").substring(prefix.length()))
                .toList());
    }

    private static Map<String, String> ingredientNames(Library library) {
        Map<String, String> names = new HashMap<>();
        for (Row row : library.table("ingredients").rows()) {
            names.put(row.text("name").toLowerCase(Locale.ROOT), row.text("id"));
            row.list("aliases").forEach(alias -> names.put(alias.toLowerCase(Locale.ROOT), row.text("id")));
        }
        return Map.copyOf(names);
    }

    private static Set<String> ordered(List<String> names) {
        return Collections.unmodifiableSet(new LinkedHashSet<>(names));
    }
}

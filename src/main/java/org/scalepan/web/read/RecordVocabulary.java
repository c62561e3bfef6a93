package org.scalepan.web.read;

import java.util.Collection;
import java.util.List;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.Region;

/** The names of the library that records may use, collected once. */
record RecordVocabulary(
        List<String> insects,
        List<String> regions,
        List<String> ipccRegions,
        List<String> climates,
        List<String> manureSystems) {
    RecordVocabulary {
        insects = List.copyOf(insects);
        regions = List.copyOf(regions);
        ipccRegions = List.copyOf(ipccRegions);
        climates = List.copyOf(climates);
        manureSystems = List.copyOf(manureSystems);
    }

    static RecordVocabulary of(Library library) {
        return library.view(RecordVocabulary.class, RecordVocabulary::read);
    }

    private static RecordVocabulary read(Library library) {
        Collection<Product> products = library.products().values();
        return new RecordVocabulary(
                products.stream()
                        .filter(product -> product.group().equals("insect"))
                        .map(Product::id)
                        .toList(),
                library.regions().all().stream().map(Region::id).toList(),
                terms(library, "ipcc-region", "ipcc."),
                terms(library, "climate", ""),
                terms(library, "manure-system", "mms."));
    }

    private static List<String> terms(Library library, String kind, String prefix) {
        return library.table("ipcc_terms").rows().stream()
                .filter(row -> row.text("kind").equals(kind))
                .map(row -> row.text("id").substring(prefix.length()))
                .toList();
    }
}

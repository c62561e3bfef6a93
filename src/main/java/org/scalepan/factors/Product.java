package org.scalepan.factors;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scalepan.factors.table.Row;

/**
 * What supplies the protein.
 *
 * @param name singular, as it stands inside a sentence: capital letters only where the language asks for them
 * @param group insect, livestock, fish, plant or feed
 * @param broader the product that includes this one, as beef includes beef from the dairy herd
 * @param defaultForm the form meant when a question names none
 * @param soldAs the functional unit that a kilogram of product as sold is equal to, when it is one
 * @param aliases other names that people type; one that only this product has is read as its id
 */
public record Product(
        String id,
        String name,
        String group,
        Optional<String> taxon,
        Optional<String> stageEaten,
        Optional<String> broader,
        String defaultForm,
        Optional<String> soldAs,
        List<String> aliases,
        Optional<String> note) {
    /** What the id of an insect that only somebody's records name begins with: no id of the library has a colon. */
    private static final String OF_RECORDS = "own:";

    public Product {
        aliases = List.copyOf(aliases);
    }

    public boolean isInsect() {
        return group.equals("insect");
    }

    /** True for what is or was an animal, so that it is asked what it ate and what it weighed alive. */
    public boolean isAnimal() {
        return !group.equals("plant") && !group.equals("feed");
    }

    /** True where a kilogram of the living animal is a unit: not of eggs and milk, which are laid and given. */
    public boolean hasLiveWeight() {
        return isAnimal()
                && (!group.equals("livestock")
                        || stageEaten.filter(eaten -> eaten.contains("meat")).isPresent());
    }

    /** True where a kilogram of carcass is a unit. */
    public boolean hasCarcass() {
        return group.equals("livestock") && hasLiveWeight();
    }

    /** True for what animals are fed and people do not eat, such as fishmeal. */
    public boolean isFeed() {
        return group.equals("feed");
    }

    /**
     * An insect that this library does not know, by the name that somebody's records give it. Nothing in the library has its id, so that
     * nothing published is taken for it but what holds of any insect.
     */
    public static Product ofRecords(String name) {
        String words = name.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return new Product(
                OF_RECORDS + (words.isEmpty() ? "insect" : words),
                name,
                "insect",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "fresh",
                Optional.of("kg-live"),
                List.of(),
                Optional.empty());
    }

    /** True for an insect that only somebody's records name. */
    public boolean isOfRecords() {
        return id.startsWith(OF_RECORDS);
    }

    /** As sentences about records call it: its id, or the name that the records give. */
    public String label() {
        return isOfRecords() ? name : id;
    }

    static Product of(Row row) {
        return new Product(
                row.text("id"),
                row.text("name"),
                row.text("group"),
                row.optional("taxon"),
                row.optional("stage_eaten"),
                row.optional("broader"),
                row.text("default_form"),
                row.optional("sold_as"),
                row.list("aliases"),
                row.optional("note"));
    }
}

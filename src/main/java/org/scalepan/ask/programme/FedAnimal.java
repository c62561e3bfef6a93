package org.scalepan.ask.programme;

import java.util.Optional;
import java.util.stream.Stream;

/** The animals whose diets a feed question is about. Ruminants are left out: no feed law that was seen permits insect meal for them. */
public enum FedAnimal {
    POULTRY("poultry"),
    FISH("fish"),
    PIG("pig");

    private final String id;

    FedAnimal(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    public static Optional<FedAnimal> of(String id) {
        return Stream.of(values()).filter(animal -> animal.id.equals(id)).findFirst();
    }
}

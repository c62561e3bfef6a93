package org.scalepan.production.heating;

import java.util.Optional;
import org.scalepan.production.RecordedNumber;

/**
 * A heated rearing room, for farms whose heat has no meter of its own.
 *
 * @param area m2 of floor
 * @param temperature °C that the room is kept at; the species' published rearing temperature when absent
 * @param insulation one of {@code uninsulated}, {@code lightly-insulated}, {@code well-insulated}; anything between them when absent
 * @param carrier energy carrier of the heat
 */
public record Heating(
        RecordedNumber area, Optional<RecordedNumber> temperature, Optional<String> insulation, String carrier) {}

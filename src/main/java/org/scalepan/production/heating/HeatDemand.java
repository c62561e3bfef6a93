package org.scalepan.production.heating;

import java.util.List;
import org.scalepan.production.climate.ClimateNormals;

/**
 * Heat demand of a room in a year, by the steady-state degree-day method: the heat loss coefficient of the room (thermal transmittance
 * times area of each surface, and heat capacity of the air that is exchanged) times the degree days of the place below the room's
 * balance temperature, which is the room's temperature less what heat given off inside holds by itself.
 *
 * <p>Source: The Open University, Energy in buildings (T313), sections 2.4.1 and 2.4.2; the same in MacKay (2009), Sustainable Energy,
 * appendix E. Sun through windows, heat stored in walls and floors and the night are not looked at.
 */
public final class HeatDemand {
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double JOULES_PER_KILOJOULE = 1000;
    private static final double MEGAJOULES_PER_WATT_DAY = 24 * SECONDS_PER_HOUR / 1e6;

    private HeatDemand() {}

    /**
     * A surface of a room.
     *
     * @param area m2
     * @param transmittance W/(m2·K), from air to air
     */
    public record Surface(double area, double transmittance) {}

    /**
     * Air that a room exchanges with the outside.
     *
     * @param volume m3 of the room
     * @param changes of all its air in an hour
     * @param heatCapacity kJ/(m3·K)
     */
    public record AirExchange(double volume, double changes, double heatCapacity) {
        /** W per K. */
        double lossCoefficient() {
            return volume * changes * heatCapacity * JOULES_PER_KILOJOULE / SECONDS_PER_HOUR;
        }
    }

    /** The heat loss coefficient of a room: W per K between inside and outside. */
    public static double lossCoefficient(List<Surface> surfaces, AirExchange air) {
        return surfaces.stream()
                        .mapToDouble(surface -> surface.area() * surface.transmittance())
                        .sum()
                + air.lossCoefficient();
    }

    /**
     * MJ of heat that a room needs in a year.
     *
     * @param lossCoefficient W per K, above zero
     * @param inside °C that the room is kept at
     * @param gains W given off inside all year, by animals
     */
    public static double megajoules(ClimateNormals normals, double lossCoefficient, double inside, double gains) {
        double balance = inside - gains / lossCoefficient;
        return lossCoefficient * normals.degreeDays(balance) * MEGAJOULES_PER_WATT_DAY;
    }
}

package org.scalepan.production.herd;

/** Methane of livestock: IPCC 2006 and 2019, volume 4, chapter 10. */
public final class Methane {
    /** MJ per kg CH4 (equation 10.21). */
    private static final double ENERGY_OF_METHANE = 55.65;
    /** kg per m3 CH4 (equation 10.23). */
    private static final double DENSITY = 0.67;

    private static final double DAYS = 365;

    private Methane() {}

    /**
     * Enteric methane, equation 10.21.
     *
     * @param grossEnergy MJ per head and day
     * @param conversion Ym, percent of gross energy
     * @return kg CH4 per head and year
     */
    public static double enteric(double grossEnergy, double conversion) {
        return grossEnergy * (conversion / 100) * DAYS / ENERGY_OF_METHANE;
    }

    /**
     * Volatile solids, equation 10.24. The urinary energy is a share of gross energy, not of digestible energy.
     *
     * @param grossEnergy MJ per head and day
     * @param digestibility percent
     * @param urinary urinary energy as a share of gross energy: 0.04 for ruminants
     * @param ash ash of manure as a share of dry matter: 0.08 for cattle
     * @return kg dry matter per head and day
     */
    public static double volatileSolids(double grossEnergy, double digestibility, double urinary, double ash) {
        return (grossEnergy * (1 - digestibility / 100) + urinary * grossEnergy) * (1 - ash) / EnergyNeed.FEED_ENERGY;
    }

    /**
     * Methane of manure in one system, equation 10.23.
     *
     * @param bo m3 CH4 per kg volatile solids
     * @param conversion MCF, percent
     * @return kg CH4 per kg volatile solids
     */
    public static double ofManure(double bo, double conversion) {
        return bo * DENSITY * conversion / 100;
    }
}

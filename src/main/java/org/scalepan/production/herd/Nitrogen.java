package org.scalepan.production.herd;

/** Nitrogen of livestock: IPCC 2006 and 2019, volume 4, chapter 10. */
public final class Nitrogen {
    /** kg N2O per kg N2O-N. */
    public static final double TO_N2O = 44.0 / 28.0;

    private static final double DAYS = 365;

    private Nitrogen() {}

    /**
     * Nitrogen excreted, equation 10.30.
     *
     * @param rate kg N per 1 000 kg animal mass and day
     * @param mass typical animal mass in kg
     * @return kg N per head and year
     */
    public static double excreted(double rate, double mass) {
        return rate * mass / 1000 * DAYS;
    }

    /**
     * Nitrogen intake with feed, equation 10.32.
     *
     * @param grossEnergy MJ per head and day
     * @param crudeProtein percent of feed dry matter
     * @return kg N per head and day
     */
    public static double intake(double grossEnergy, double crudeProtein) {
        return grossEnergy / EnergyNeed.FEED_ENERGY * crudeProtein / 100 / 6.25;
    }

    /**
     * Nitrogen retained by cattle in milk and gain, equation 10.33.
     *
     * @param milk kg a day
     * @param milkProtein percent; 1.9 + 0.4 × fat where not measured
     * @param gain kg a day
     * @param growthEnergy NEg, MJ a day
     * @return kg N per head and day
     */
    public static double retained(double milk, double milkProtein, double gain, double growthEnergy) {
        double inMilk = milk * milkProtein / 100 / 6.38;
        double inGain = gain == 0 ? 0 : gain * (268 - 7.03 * growthEnergy / gain) / 1000 / 6.25;
        return inMilk + inGain;
    }
}

package org.scalepan.production.herd;

/**
 * The energy that one head of cattle or buffalo needs in a day, and the gross energy of the feed that covers it: IPCC 2006 and 2019,
 * volume 4, chapter 10, equations 10.3 to 10.16. All energies in MJ per head and day.
 *
 * @param maintenance NEm, equation 10.3
 * @param activity NEa, equation 10.4
 * @param growth NEg, equation 10.6
 * @param lactation NEl, equation 10.8
 * @param work NEwork, equation 10.11
 * @param pregnancy NEp, equation 10.13
 * @param forMaintenance REM, net energy for maintenance over digestible energy, equation 10.14
 * @param forGrowth REG, net energy for growth over digestible energy, equation 10.15
 * @param gross GE, equation 10.16
 */
public record EnergyNeed(
        double maintenance,
        double activity,
        double growth,
        double lactation,
        double work,
        double pregnancy,
        double forMaintenance,
        double forGrowth,
        double gross) {

    /** MJ per kg feed dry matter (IPCC, chapter 10, note to equation 10.16). */
    public static final double FEED_ENERGY = 18.45;

    /**
     * What is known of the animal.
     *
     * @param weight live weight in kg, above zero
     * @param matureWeight live weight of the mature animal in kg; used for growth only
     * @param gain gain in kg a day, zero or more
     * @param milk milk in kg a day, zero or more
     * @param fat fat in the milk, percent
     * @param pregnant share of the animals that are pregnant, 0 to 1
     * @param workHours hours of work a day
     * @param digestibility digestible energy in percent of gross energy, 40 to 90; feeds of cattle lie between 45 and 85
     */
    public record Animal(
            double weight,
            double matureWeight,
            double gain,
            double milk,
            double fat,
            double pregnant,
            double workHours,
            double digestibility) {
        public Animal {
            require(weight > 0, "weight", weight, "above 0 kg");
            require(matureWeight >= 0, "mature weight", matureWeight, "0 kg or more");
            require(gain >= 0, "gain", gain, "0 kg a day or more");
            require(gain == 0 || matureWeight > 0, "mature weight of a growing animal", matureWeight, "above 0 kg");
            require(milk >= 0, "milk", milk, "0 kg a day or more");
            require(fat >= 0 && fat <= 15, "fat", fat, "0 to 15 percent");
            require(pregnant >= 0 && pregnant <= 1, "share pregnant", pregnant, "0 to 1");
            require(workHours >= 0 && workHours <= 24, "work", workHours, "0 to 24 hours a day");
            require(digestibility >= 40 && digestibility <= 90, "digestibility", digestibility, "40 to 90 percent");
        }

        private static void require(boolean right, String what, double value, String range) {
            if (!right) {
                throw new IllegalArgumentException(what + " is " + value + "; it must be " + range);
            }
        }
    }

    /**
     * The coefficients of the animal's class.
     *
     * @param maintenance Cfi, MJ per day and kg^0.75 (table 10.4)
     * @param activity Ca (table 10.5)
     * @param growth C: 0.8 females, 1.0 castrates, 1.2 bulls (equation 10.6)
     * @param pregnancy Cpregnancy (table 10.7)
     */
    public record Coefficients(double maintenance, double activity, double growth, double pregnancy) {}

    /** The energy need of an animal. */
    public static EnergyNeed of(Animal animal, Coefficients c) {
        double maintenance = c.maintenance() * StrictMath.pow(animal.weight(), 0.75);
        double growth = animal.gain() == 0
                ? 0
                : 22.02
                        * StrictMath.pow(animal.weight() / (c.growth() * animal.matureWeight()), 0.75)
                        * StrictMath.pow(animal.gain(), 1.097);
        double activity = c.activity() * maintenance;
        double lactation = animal.milk() * (1.47 + 0.40 * animal.fat());
        double work = 0.10 * maintenance * animal.workHours();
        double pregnancy = c.pregnancy() * maintenance * animal.pregnant();
        double de = animal.digestibility();
        double forMaintenance = 1.123 - 4.092e-3 * de + 1.126e-5 * de * de - 25.4 / de;
        double forGrowth = 1.164 - 5.160e-3 * de + 1.308e-5 * de * de - 37.4 / de;
        double gross = ((maintenance + activity + lactation + work + pregnancy) / forMaintenance + growth / forGrowth)
                / (de / 100);
        return new EnergyNeed(
                maintenance, activity, growth, lactation, work, pregnancy, forMaintenance, forGrowth, gross);
    }

    /** Feed dry matter in kg per head and day. */
    public double feedDryMatter() {
        return gross / FEED_ENERGY;
    }
}

package org.scalepan.production.herd;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.TermFactor.RecordFormula;

/**
 * The energy that one head needs in a day, and what follows from it, where its records may be ranges: the equations of {@link EnergyNeed},
 * {@link Methane} and {@link Nitrogen}, worked out draw by draw.
 *
 * @param need with every record in the middle
 * @param gross gross energy, MJ per head and day
 * @param growth net energy for growth, MJ per head and day
 */
record HeadEnergy(HeadRecords head, EnergyNeed need, ActivityTerm gross, ActivityTerm growth) {

    static HeadEnergy of(HeadRecords head, EnergyNeed.Coefficients coefficients) {
        EnergyNeed need = EnergyNeed.of(head.animal(), coefficients);
        List<ActivityTerm> records = head.terms();
        boolean certain = ActivityTerm.areCertain(records);
        return new HeadEnergy(
                head,
                need,
                certain ? ActivityTerm.of(need.gross()) : ActivityTerm.derived(new GrossEnergy(coefficients), records),
                certain
                        ? ActivityTerm.of(need.growth())
                        : ActivityTerm.derived(new GrowthEnergy(coefficients), records));
    }

    private record GrossEnergy(EnergyNeed.Coefficients coefficients) implements RecordFormula {
        @Override
        public double of(double[] inputs) {
            return EnergyNeed.of(HeadRecords.animal(inputs), coefficients).gross();
        }
    }

    private record GrowthEnergy(EnergyNeed.Coefficients coefficients) implements RecordFormula {
        @Override
        public double of(double[] inputs) {
            return EnergyNeed.of(HeadRecords.animal(inputs), coefficients).growth();
        }
    }

    /** Feed dry matter in kg per head and day. */
    ActivityTerm feedDryMatter() {
        return gross.over(EnergyNeed.FEED_ENERGY);
    }

    /**
     * kg CH4 per head and year.
     *
     * @param conversion Ym, percent of gross energy
     */
    ActivityTerm enteric(ActivityTerm conversion) {
        return ActivityTerm.derived(new EntericMethane(), List.of(gross, conversion));
    }

    private record EntericMethane() implements RecordFormula {
        @Override
        public double of(double[] inputs) {
            return Methane.enteric(inputs[0], inputs[1]);
        }
    }

    /** kg volatile solids per head and day; urinary energy and ash as in {@link Methane#volatileSolids}. */
    ActivityTerm volatileSolids(double urinary, double ash) {
        return ActivityTerm.derived(
                new VolatileSolids(urinary, ash),
                List.of(gross, head.digestibility().term()));
    }

    private record VolatileSolids(double urinary, double ash) implements RecordFormula {
        @Override
        public double of(double[] inputs) {
            return Methane.volatileSolids(inputs[0], inputs[1], urinary, ash);
        }
    }

    /**
     * kg N excreted per head and day: the intake less what is kept in milk and gain.
     *
     * @param crudeProtein percent of feed dry matter
     */
    ActivityTerm nitrogen(ActivityTerm crudeProtein) {
        List<ActivityTerm> inputs = new ArrayList<>(head.terms());
        inputs.addAll(List.of(gross, growth, crudeProtein));
        return ActivityTerm.derived(new ExcretedNitrogen(), inputs);
    }

    private record ExcretedNitrogen() implements RecordFormula {
        @Override
        public double of(double[] inputs) {
            int head = HeadRecords.TERMS;
            EnergyNeed.Animal animal = HeadRecords.animal(Arrays.copyOf(inputs, head));
            double intake = Nitrogen.intake(inputs[head], inputs[head + 2]);
            double kept = Nitrogen.retained(animal.milk(), 1.9 + 0.4 * animal.fat(), animal.gain(), inputs[head + 1]);
            return Math.max(intake - kept, 0);
        }
    }
}

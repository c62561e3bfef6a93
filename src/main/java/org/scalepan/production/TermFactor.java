package org.scalepan.production;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.footprint.CommonRandomNumbers;

/** An uncertain factor of an {@link ActivityTerm}: drawn itself, or made of records that are. */
public sealed interface TermFactor permits Factor, TermFactor.DerivedFactor {
    /** The value with everything drawn in the middle. */
    double central();

    /** Its draws. Shared: callers must not write to them. */
    double[] drawn(CommonRandomNumbers random);

    /** The row of the library it comes from, when it comes from one. */
    Optional<String> row();

    /** True for what somebody's records leave open, false for a factor of the library. */
    boolean isRecorded();

    /** What is drawn for it. */
    Stream<Factor> behind();

    /** The central value but for one drawn factor, which has another. */
    double centralWith(Factor moved, double value);

    /** How a number follows from others. A record, so that two inventories of the same records are equal. */
    interface RecordFormula {
        /** The number that follows from its inputs, in their order. */
        double of(double[] inputs);
    }

    /**
     * What follows from records by another way than multiplying.
     *
     * @param inputs without factors of the library
     * @param central the formula at the central values of the inputs
     */
    record DerivedFactor(List<ActivityTerm> inputs, RecordFormula formula, double central) implements TermFactor {
        public DerivedFactor {
            inputs = List.copyOf(inputs);
        }

        DerivedFactor(List<ActivityTerm> inputs, RecordFormula formula) {
            this(inputs, formula, formula.of(ActivityTerm.centrals(inputs)));
        }

        @Override
        public double[] drawn(CommonRandomNumbers random) {
            List<double[]> columns =
                    inputs.stream().map(input -> input.drawn(random)).toList();
            double[] row = new double[columns.size()];
            double[] values = new double[random.size()];
            for (int i = 0; i < values.length; i++) {
                for (int j = 0; j < row.length; j++) {
                    row[j] = columns.get(j)[i];
                }
                values[i] = formula.of(row);
            }
            return values;
        }

        @Override
        public Optional<String> row() {
            return Optional.empty();
        }

        @Override
        public boolean isRecorded() {
            return true;
        }

        @Override
        public Stream<Factor> behind() {
            return inputs.stream()
                    .flatMap(input -> input.uses().stream())
                    .flatMap(use -> use.factor().behind())
                    .distinct();
        }

        @Override
        public double centralWith(Factor moved, double value) {
            double[] row = new double[inputs.size()];
            for (int j = 0; j < row.length; j++) {
                row[j] = inputs.get(j).centralWith(moved, value);
            }
            return formula.of(row);
        }
    }
}

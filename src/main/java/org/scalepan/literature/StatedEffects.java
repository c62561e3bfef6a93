package org.scalepan.literature;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.factors.Library;
import org.scalepan.uncertainty.hierarchy.StudyEffects;

/**
 * What the studies of a pool state, as a hierarchy of studies needs it: of each ln of its central value on the basis of the question, and the
 * standard error of that. Findings of one study are made one first: the mean of their ln, and of their variances. The error is the published
 * sampling error; where none is, the geometric standard deviation that is assumed for a number alone. The conversions are in the effect and
 * not in the error.
 *
 * @param studies those with results above zero alone
 * @param effects theirs, in the same order
 */
record StatedEffects(List<Study> studies, StudyEffects effects) {
    StatedEffects {
        studies = List.copyOf(studies);
    }

    /** The effects of a pool; empty where no study has results above zero alone, which have no logarithm. */
    static Optional<StatedEffects> of(Library library, Evidence.PooledEvidence evidence) {
        AssumedSpread assumed = new AssumedSpread(library, evidence.question());
        List<Study> studies = evidence.studies().stream()
                .filter(study -> study.findings().stream().allMatch(finding -> finding.central() > 0))
                .toList();
        if (studies.isEmpty()) {
            return Optional.empty();
        }
        double[] effects = new double[studies.size()];
        double[] errors = new double[studies.size()];
        for (int i = 0; i < effects.length; i++) {
            List<Harmonised> findings = studies.get(i).findings();
            effects[i] = findings.stream()
                    .mapToDouble(finding -> StrictMath.log(finding.central()))
                    .average()
                    .orElseThrow();
            errors[i] = Math.sqrt(findings.stream()
                    .mapToDouble(finding -> variance(assumed, finding))
                    .average()
                    .orElseThrow());
        }
        return Optional.of(new StatedEffects(studies, StudyEffects.of(effects, errors)));
    }

    private static double variance(AssumedSpread assumed, Harmonised finding) {
        OptionalDouble published = SamplingError.published(
                finding.result().printed(), finding.result().farms());
        if (published.isPresent()) {
            return published.getAsDouble();
        }
        double error = StrictMath.log(assumed.gsd(finding.result()));
        return error * error;
    }

    /** The ids of the findings behind it. */
    List<String> findings() {
        List<String> ids = new ArrayList<>();
        studies.forEach(study ->
                study.findings().forEach(finding -> ids.add(finding.result().finding())));
        return ids;
    }
}

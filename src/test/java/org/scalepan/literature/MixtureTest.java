package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Which finding each draw of a pooled footprint comes from. */
class MixtureTest {
    @Test
    void studies_share_the_draws_evenly_and_findings_share_those_of_their_study() {
        double[] choice = {0.0, 0.2, 0.26, 0.49, 0.5, 0.9, 0.999};
        Mixture mixture = Mixture.of(new int[] {2, 1}, choice);

        assertArrayEquals(new int[] {0, 1}, mixture.places(0, 0), "the first quarter");
        assertArrayEquals(new int[] {2, 3}, mixture.places(0, 1), "the second quarter");
        assertArrayEquals(new int[] {4, 5, 6}, mixture.places(1, 0), "the second half");
    }

    @Test
    void every_draw_comes_from_one_finding() {
        SplittableRandom random = new SplittableRandom(5);
        for (int round = 0; round < 50; round++) {
            int[] findings = random.ints(1 + random.nextInt(6), 1, 9).toArray();
            double[] choice = random.doubles(1 + random.nextInt(500)).toArray();
            Mixture mixture = Mixture.of(findings, choice);

            List<Integer> all = new ArrayList<>();
            for (int study = 0; study < findings.length; study++) {
                for (int finding = 0; finding < findings[study]; finding++) {
                    for (int place : mixture.places(study, finding)) {
                        all.add(place);
                    }
                }
            }
            assertEquals(choice.length, all.stream().distinct().count(), "none twice, none left out");
            assertEquals(choice.length, all.size());
        }
    }
}

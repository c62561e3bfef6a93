package org.scalepan.literature;

/**
 * Which finding each draw of a pooled footprint comes from: studies with equal weight, and within a study its findings with equal
 * weight. The draws of each finding are known beforehand, so that it is drawn only where it is chosen.
 */
final class Mixture {
    private final int[][][] places;

    private Mixture(int[][][] places) {
        this.places = places;
    }

    /**
     * @param findings how many findings each study has
     * @param choice uniform draws, zero included and one excluded
     */
    static Mixture of(int[] findings, double[] choice) {
        int[] first = new int[findings.length + 1];
        for (int study = 0; study < findings.length; study++) {
            first[study + 1] = first[study] + findings[study];
        }
        int[] chosen = new int[choice.length];
        int[] count = new int[first[findings.length]];
        for (int i = 0; i < choice.length; i++) {
            double position = choice[i] * findings.length;
            int study = (int) position;
            chosen[i] = first[study] + (int) ((position - study) * findings[study]);
            count[chosen[i]]++;
        }
        int[][] flat = new int[count.length][];
        for (int at = 0; at < flat.length; at++) {
            flat[at] = new int[count[at]];
        }
        for (int i = choice.length - 1; i >= 0; i--) {
            flat[chosen[i]][--count[chosen[i]]] = i;
        }
        int[][][] places = new int[findings.length][][];
        for (int study = 0; study < findings.length; study++) {
            places[study] = java.util.Arrays.copyOfRange(flat, first[study], first[study + 1]);
        }
        return new Mixture(places);
    }

    /** The indices of the draws that come from a finding of a study, ascending. */
    int[] places(int study, int finding) {
        return places[study][finding];
    }
}

package org.scalepan.literature;

import java.util.List;

/**
 * One study in a pool: it has one weight, however many findings it has and however many sources restate it.
 *
 * @param id the source id of the study itself
 * @param findings its findings on the basis of the question, which share its weight equally
 */
public record Study(String id, List<Harmonised> findings) {
    public Study {
        findings = List.copyOf(findings);
    }
}

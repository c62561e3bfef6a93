package org.scalepan.literature;

import java.util.List;

/**
 * One source's say in a pool: it weighs as one study, however many findings it brings.
 *
 * @param source source id
 * @param findings its findings on the ruler of the question, which share its weight equally
 */
public record Study(String source, List<Harmonised> findings) {
    public Study {
        findings = List.copyOf(findings);
    }
}

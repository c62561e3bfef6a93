package org.scalepan.web.render;

import java.util.LinkedHashMap;
import java.util.Map;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.NoFigure;
import org.scalepan.factors.Grade;
import org.scalepan.literature.LandUseChange;

/** The address of a cell that has an answer where the one asked has none: it works as it is pasted. */
public final class InsteadAddress {
    private InsteadAddress() {}

    /** The address of the figure itself. */
    public static String of(NoFigure.Answerable known) {
        ComparisonBasis basis = known.basis();
        return Permalink.unpinned(
                "/v1/value/" + basis.indicator().id() + "/" + known.item().written(), parameters(basis, known.bound()));
    }

    /** What a question must say to stand on a basis; what is usual is left out. */
    public static Map<String, Object> parameters(ComparisonBasis basis, boolean bound) {
        Map<String, Object> question = new LinkedHashMap<>();
        question.put("per", basis.per().id());
        question.put("boundary", basis.boundary().id());
        if (basis.luc() != LandUseChange.EXCLUDE) {
            question.put("luc", basis.luc().id());
        }
        if (!basis.region().equals("world")) {
            question.put("region", basis.region());
        }
        if (basis.lowestGrade() != Grade.USUAL) {
            question.put("grade", basis.lowestGrade().id());
        }
        if (basis.evidence() != EvidenceKind.PUBLISHED) {
            question.put("evidence", basis.evidence().id());
        }
        if (bound) {
            question.put("bounds", "yes");
        }
        return question;
    }
}

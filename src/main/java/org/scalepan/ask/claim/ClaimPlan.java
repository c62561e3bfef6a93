package org.scalepan.ask.claim;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Side;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.words.Language;

/** The plan of a claim check, before anything is drawn: for each of its products the bases that have evidence. */
public final class ClaimPlan {
    /** How many draws the footprints of one claim may have together: they are computed one after the other and not retained. */
    public static final int MOST_DRAWS = 20_000_000;

    private final Library library;
    private final ClaimQuestion question;
    private final Grid grid;
    private final Map<Side, List<ComparisonBasis>> bases = new LinkedHashMap<>();

    public ClaimPlan(Library library, ClaimQuestion question) {
        this.library = library;
        this.question = question;
        this.grid = new Grid(library, question);
        question.subject().sides().forEach(side -> bases.put(side, grid.bases(side)));
    }

    Library library() {
        return library;
    }

    ClaimQuestion question() {
        return question;
    }

    /** How many footprints will be drawn. */
    public int footprints() {
        int sides = question.reference().isPresent() ? 2 : 1;
        int otherLandUse = question.basis().withOtherLandUse().isPresent() ? bases.size() : 0;
        return sides * (bases.values().stream().mapToInt(List::size).sum() + otherLandUse);
    }

    /** True when the answer is within the limit of draws. */
    public boolean isAffordable() {
        return (long) footprints() * question.sampling().draws() <= MOST_DRAWS;
    }

    /** Draws and checks, in English. */
    public ClaimChecks check() {
        return check(Language.ENGLISH);
    }

    /** Draws and checks. */
    public ClaimChecks check(Language language) {
        return ClaimChecks.of(this, language);
    }

    ClaimCheck check(Side side, CommonRandomNumbers random, Language language) {
        return ClaimCheck.of(library, question, side, grid, bases.getOrDefault(side, List.of()), random, language);
    }
}

package org.scalepan.literature;

import java.util.OptionalInt;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Library;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.SpreadDefaults;
import org.scalepan.uncertainty.Pedigree;

/**
 * The geometric standard deviation assumed for a number that was published alone: the library's basic one, raised by the row's
 * pedigree scores, by its age and by how its region relates to the one asked for.
 */
final class AssumedSpread {
    private static final int UNKNOWN_AGE = 5;

    private final Library library;
    private final PoolQuestion question;

    AssumedSpread(Library library, PoolQuestion question) {
        this.library = library;
        this.question = question;
    }

    double gsd(PublishedResult result) {
        SpreadDefaults defaults = library.spreadDefaults();
        PublishedResult.PedigreeScores scores = result.pedigree();
        return Pedigree.gsd(
                defaults.result(),
                defaults.squaredFactor("reliability", scores.reliability()),
                defaults.squaredFactor("completeness", scores.completeness()),
                defaults.squaredFactor("technology", scores.technology()),
                defaults.squaredFactor("time", OptionalInt.of(timeScore(result))),
                defaults.squaredFactor("geography", OptionalInt.of(geographyScore(result))));
    }

    /** Weidema & Wesnæs 1996: under 3 years 1, under 6 years 2, under 10 years 3, under 15 years 4, older or unknown 5. */
    private int timeScore(PublishedResult result) {
        OptionalInt year = result.dataYear();
        if (year.isEmpty()) {
            year = library.reference(result.cited().source())
                    .map(Reference::year)
                    .orElse(OptionalInt.empty());
        }
        OptionalInt libraryYear = LibraryYear.of(library);
        if (year.isEmpty() || libraryYear.isEmpty()) {
            return UNKNOWN_AGE;
        }
        int age = libraryYear.getAsInt() - year.getAsInt();
        return age < 3 ? 1 : age < 6 ? 2 : age < 10 ? 3 : age < 15 ? 4 : UNKNOWN_AGE;
    }

    /** The same area 1; a larger area that includes it, or a part of it, 2; elsewhere 5. */
    private int geographyScore(PublishedResult result) {
        String asked = question.region();
        if (asked.equals(result.region())) {
            return 1;
        }
        boolean related = library.regions().contains(asked, result.region())
                || library.regions().contains(result.region(), asked);
        return related ? 2 : 5;
    }
}

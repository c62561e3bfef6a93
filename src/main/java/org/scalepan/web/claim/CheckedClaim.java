package org.scalepan.web.claim;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.claim.ClaimChecks;
import org.scalepan.ask.claim.ParsedClaim;
import org.scalepan.ask.contents.ContentChecks;
import org.scalepan.factors.Library;
import org.scalepan.web.render.Document;
import org.scalepan.web.render.Permalink;

/** A claim that was checked, to be put into any format. */
sealed interface CheckedClaim {
    ObjectNode tree();

    Document document();

    /**
     * Of what production causes.
     *
     * @param sentence what was understood, where the claim was a sentence
     * @param question as resolved
     * @param path the route; none for posted records, whose answer has no permalink
     */
    record OfProduction(
            Library library,
            ClaimChecks checks,
            Optional<ParsedClaim> sentence,
            Map<String, Object> question,
            Optional<String> path)
            implements CheckedClaim {
        @Override
        public ObjectNode tree() {
            return new ClaimJson(library, checks, sentence).tree(question, path);
        }

        @Override
        public Document document() {
            return new ClaimDocument(checks).document(path.map(at -> Permalink.of(library, at, question)));
        }
    }

    /**
     * Of what foods contain.
     *
     * @param sentence what was understood, where the claim was a sentence
     * @param question as resolved
     * @param path the route
     */
    record OfContents(
            Library library,
            ContentChecks checks,
            Optional<ParsedClaim> sentence,
            Map<String, Object> question,
            String path)
            implements CheckedClaim {
        @Override
        public ObjectNode tree() {
            return new ContentClaimJson(library, checks, sentence).tree(question, path);
        }

        @Override
        public Document document() {
            return new ContentClaimDocument(checks).document(Permalink.of(library, path, question));
        }
    }
}

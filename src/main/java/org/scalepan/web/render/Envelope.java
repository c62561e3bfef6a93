package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.Warning;
import org.scalepan.cite.PlainText;
import org.scalepan.cite.Reference;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Caution;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.words.Language;

/** What every JSON answer has besides its content: the question as resolved, the library, the permalink, warnings, cautions. */
public final class Envelope {
    private Envelope() {}

    /** Starts an answer. */
    public static ObjectNode open(Library library, String path, Map<String, Object> question) {
        ObjectNode node = Json.object();
        node.set("question", Json.map(question));
        node.set("library", library(library));
        node.put("permalink", Permalink.of(library, path, question));
        return node;
    }

    /** Completes an answer with warnings, cautions and references. */
    public static void close(
            ObjectNode node,
            List<Warning> warnings,
            Library library,
            Collection<Product> products,
            List<Reference> references) {
        close(node, warnings, library, products, references, Language.ENGLISH);
    }

    /** The same with warnings and cautions in a language. */
    public static void close(
            ObjectNode node,
            List<Warning> warnings,
            Library library,
            Collection<Product> products,
            List<Reference> references,
            Language language) {
        node.set("warnings", warnings(warnings, language));
        node.set("cautions", cautions(library, products, Optional.empty(), language));
        node.set("references", references(references));
    }

    /** Completes an answer with the provenance of its figures. */
    public static void close(ObjectNode node, Provenance provenance) {
        close(node, provenance.warnings(), provenance.library(), provenance.products(), provenance.references());
    }

    /** The same with warnings and cautions in a language. */
    public static void close(ObjectNode node, Provenance provenance, Language language) {
        close(
                node,
                provenance.warnings(),
                provenance.library(),
                provenance.products(),
                provenance.references(),
                language);
    }

    /** Completes an answer that only lists rows. */
    public static void close(ObjectNode node) {
        node.set("warnings", Json.array());
        node.set("cautions", Json.array());
    }

    public static ObjectNode library(Library library) {
        ObjectNode node = Json.object();
        node.put("version", library.version().version());
        node.put("digest", library.version().digest());
        return node;
    }

    static ArrayNode warnings(List<Warning> warnings, Language language) {
        ArrayNode array = Json.array();
        for (Warning warning : warnings) {
            ObjectNode node = array.addObject();
            node.put("code", warning.code());
            node.put("text", warning.text(language));
            node.set("about", Json.texts(warning.about()));
        }
        return array;
    }

    public static ArrayNode cautions(Library library, Collection<Product> products) {
        return cautions(library, products, Optional.empty(), Language.ENGLISH);
    }

    /** The cautions about products; with a market only those that apply everywhere or there. */
    public static ArrayNode cautions(
            Library library, Collection<Product> products, Optional<String> market, Language language) {
        ArrayNode array = Json.array();
        library.cautionsAbout(products, market).forEach(caution -> array.add(caution(caution, language)));
        return array;
    }

    static ObjectNode caution(Caution caution, Language language) {
        ObjectNode node = Json.object();
        node.put("id", caution.id());
        node.put("topic", caution.topic());
        node.put("text", language.sayOr("caution." + caution.id(), caution.text()));
        node.set("sources", Json.texts(caution.sources()));
        node.put("check", caution.check().id());
        return node;
    }

    private static ArrayNode references(List<Reference> references) {
        ArrayNode array = Json.array();
        for (Reference reference : references) {
            ObjectNode node = array.addObject();
            node.put("id", reference.id());
            node.put("label", reference.label());
            node.put("text", PlainText.of(reference));
            Json.put(node, "doi", reference.doi());
            node.put("check", reference.check());
            if (!reference.missing().isEmpty()) {
                node.set("not_known", Json.texts(reference.missing()));
            }
        }
        return array;
    }
}

package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.Sentences;
import org.scalepan.exchange.text.Json;
import org.scalepan.words.DisplayName;

/** The second figure of records that count by-products as burden-free although they are sold. */
public final class DisplacedUseJson {
    private DisplacedUseJson() {}

    /** The by-products, the figure with their use elsewhere counted, what of that is not known, and all of it in a sentence. */
    public static ObjectNode of(DisplacedUseFigure figure, Sentences sentences) {
        ObjectNode node = Json.object();
        node.set("ingredients", Json.texts(figure.ingredients()));
        node.put("status", figure.estimate().isPresent() ? "ok" : "missing");
        figure.estimate().ifPresent(found -> {
            node.put("bound", found.bound().id());
            found.summary()
                    .ifPresent(summary ->
                            node.set("footprint", EstimateJson.footprint(summary, sentences, found.bound())));
        });
        node.set("missing", Json.texts(figure.missing(), sentences.language()));
        node.put("text", figure.sentence(sentences, Optional.empty(), DisplayName.given("")));
        return node;
    }
}

package org.scalepan.web.route;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.input.Input;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.RequestBody;
import org.scalepan.words.Language;

/**
 * One request as a handler sees it.
 *
 * @param path the path of the request target
 * @param variables the path variables of the route
 * @param parameters the query parameters
 * @param accept the Accept header
 * @param sent the request body
 * @param scheme by which the client came: http, or as a trusted proxy says
 * @param host the Host header
 * @param client the client
 */
public record Request(
        String path,
        Map<String, String> variables,
        Input parameters,
        String accept,
        RequestBody sent,
        String scheme,
        String host,
        Client client) {

    public String variable(String name) {
        return variables.getOrDefault(name, "");
    }

    /**
     * The language of sentences: {@code lang=}, English by default. English is not put into the resolved question, so that a link without it
     * is the same question.
     */
    public Language language() {
        Optional<String> asked = parameters.raw(Route.LANG).map(given -> Input.asListed(given, Language.ids()));
        asked.filter(given -> Language.of(given).isEmpty())
                .ifPresent(given -> parameters.unknown(Route.LANG, given, Language.ids()));
        Language language = asked.flatMap(Language::of).orElse(Language.ENGLISH);
        if (language != Language.ENGLISH) {
            parameters.resolve(Route.LANG, language.id());
        }
        return language;
    }

    /** The format of the answer: {@code format=} first, then the Accept header, then the first of those offered. */
    public Format format(List<Format> offered) {
        return Format.choose(parameters, accept, offered);
    }
}

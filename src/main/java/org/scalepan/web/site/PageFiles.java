package org.scalepan.web.site;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.FixedFile;
import org.scalepan.web.http.WebJar;

/**
 * The files that the pages with the chart load: a closed list. The chart library comes from its web jar unchanged; the invented farms are
 * those in {@code factors/systems}.
 */
final class PageFiles {
    static final String LIBRARY = "d3.min.js";

    private static final List<String> SCRIPTS = List.of(
            "ask.js",
            "chart.js",
            "circulating.js",
            "compare.js",
            "contents.js",
            "copy.js",
            "d3.js",
            "dom.js",
            "en.js",
            "examples.js",
            "farm.js",
            "farm-chart.js",
            "farm-form.js",
            "farm-more.js",
            "farm-places.js",
            "farm-price.js",
            "farm-records.js",
            "farm-said.js",
            "foods.js",
            "fr.js",
            "frame.js",
            "i18n.js",
            "leads.js",
            "marks.js",
            "modelled.js",
            "picture-file.js",
            "plain.js",
            "programme.js",
            "programme-form.js",
            "programme-said.js",
            "protein.js",
            "question.js",
            "ranges.js",
            "scale.js",
            "service.js",
            "spoken.js",
            "study.js",
            "tables.js",
            "take.js",
            "terms.js",
            "verdict.js",
            "vocabulary.js");
    private static final List<String> INVENTED = List.of(
            "invented-school-superworms.json",
            "invented-brewery-black-soldier-flies.json",
            "invented-allotment-hens.json");

    private final Map<String, FixedFile> files = new HashMap<>();

    PageFiles() {
        SCRIPTS.forEach(name -> files.put(name, new FixedFile("/site/page/" + name, "text/javascript; charset=utf-8")));
        files.put("scalepan.css", new FixedFile("/site/page/scalepan.css", "text/css; charset=utf-8"));
        files.put("mark.svg", new FixedFile("/site/page/mark.svg", "image/svg+xml"));
        String d3 = "/META-INF/resources/webjars/d3/" + WebJar.version("org.webjars.npm", "d3") + "/dist/" + LIBRARY;
        files.put(LIBRARY, new FixedFile(d3, "text/javascript; charset=utf-8"));
        INVENTED.forEach(name -> files.put(name, new FixedFile("/factors/systems/" + name, Answer.JSON)));
    }

    Optional<Answer> file(String name) {
        return Optional.ofNullable(files.get(name)).map(FixedFile::answer);
    }

    /** All names on the list, for checking the pages and the description against it. */
    Set<String> names() {
        return new TreeSet<>(files.keySet());
    }
}

package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.Reply;

/** The files of the pages with the chart: what a page loads, its size, and that no unused file is served. */
class PageFilesTest {
    private static final int MOST_BYTES = 300_000;
    private static final Pattern LOADED = Pattern.compile("(?:src|href)=\"(/page/[^\"]+)\"");
    private static final Pattern IMPORTED = Pattern.compile("(?:from|import) ?\\(?[\"`]\\./([^\"`]+)[\"`]");

    /** Everything a page loads, through all imports, in every language. */
    private static Set<String> loadedBy(String page) {
        Set<String> loaded = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>();
        Matcher first = LOADED.matcher(Reply.to(page).body());
        while (first.find()) {
            open.add(first.group(1));
        }
        while (!open.isEmpty()) {
            String file = open.remove();
            if (!loaded.add(file)) {
                continue;
            }
            Matcher imported = IMPORTED.matcher(
                    file.endsWith("d3.min.js") ? "" : Reply.to(file).body());
            while (imported.find()) {
                String name = imported.group(1);
                if (name.startsWith("${language}")) {
                    open.add("/page/fr.js");
                } else {
                    open.add("/page/" + name);
                }
            }
        }
        return loaded;
    }

    private static int compressed(String file) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(Reply.to(file).body().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }
        return out.size();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/farm", "/protein", "/programme"})
    void a_page_weighs_less_than_300_kB_compressed_with_all_it_loads(String page) throws IOException {
        int sum = compressed(page);
        for (String file : loadedBy(page)) {
            assertEquals(200, Reply.to(file).status(), file);
            sum += compressed(file);
        }

        assertTrue(sum > 90_000, "the chart library alone weighs more than " + sum);
        assertTrue(sum < MOST_BYTES, "bytes " + sum);
    }

    @Test
    void every_file_that_is_served_is_loaded_by_a_page() {
        Set<String> loaded = new TreeSet<>();
        List.of("/", "/farm", "/protein", "/programme", "/examples", "/docs", "/guide")
                .forEach(page -> loaded.addAll(loadedBy(page)));
        Set<String> served = new TreeSet<>();
        new PageFiles()
                .names().stream()
                        .filter(name -> !name.startsWith("invented-"))
                        .forEach(name -> served.add("/page/" + name));

        assertEquals(served, loaded);
    }

    @Test
    void scripts_make_no_markup_out_of_text_and_keep_nothing() {
        for (String name : new PageFiles().names()) {
            if (!name.endsWith(".js") || name.equals(PageFiles.LIBRARY)) {
                continue;
            }
            String script = Reply.to("/page/" + name).body();
            for (String forbidden : List.of(
                    "innerHTML",
                    "outerHTML",
                    "insertAdjacentHTML",
                    "eval(",
                    "localStorage",
                    "sessionStorage",
                    "cookie")) {
                assertFalse(script.contains(forbidden), name + " has " + forbidden);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/farm", "/protein", "/programme", "/examples", "/docs", "/guide", "/guide/methods"})
    void a_page_has_no_style_and_no_script_of_its_own(String page) {
        String html = Reply.to(page).body();

        assertFalse(Pattern.compile("\\sstyle=|<style").matcher(html).find());
        assertFalse(Pattern.compile("<script(?![^>]*\\bsrc=)").matcher(html).find());
    }

    @Test
    void the_chart_library_brings_its_licence() {
        assertTrue(
                Reply.to("/page/d3.min.js").body().startsWith("// https://d3js.org"), "the header names its authors");
    }

    @ParameterizedTest
    @ValueSource(strings = {"..%2fen.js", "no-such.js", "index.html"})
    void other_files_are_not_found(String name) {
        int status = Reply.to("/page/" + name).status();

        assertTrue(status == 404 || status == 400, name + " " + status);
    }
}

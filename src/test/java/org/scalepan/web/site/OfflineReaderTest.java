package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.Reply;

/** The pages work offline: everything they load is served by this service. */
class OfflineReaderTest {
    private static final Pattern LOADED = Pattern.compile("(?:src|<link[^>]* href)=\"([^\"]*)\"");
    private static final Pattern FETCHED = Pattern.compile("\\burl(?:\\(|:)\\s*\"?([^\")\\s,]+)");

    private static List<String> found(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/protein", "/programme", "/docs", "/examples"})
    void a_page_loads_only_files_of_this_service_and_each_is_there(String page) {
        List<String> loaded = found(LOADED, Reply.to(page).body());

        assertFalse(loaded.isEmpty(), page + " loads nothing, which this test cannot judge");
        for (String file : loaded) {
            assertTrue(file.matches("/[a-z][a-z0-9./-]*"), () -> page + " loads " + file);
            assertEquals(200, Reply.to(file).status(), file);
        }
    }

    @Test
    void the_viewer_renders_the_description_of_this_service_and_calls_no_validator() {
        String script = Reply.to("/docs/reader.js").body();

        assertEquals(List.of("/openapi.yaml"), found(FETCHED, script));
        assertEquals(200, Reply.to("/openapi.yaml").status());
        assertTrue(script.contains("validatorUrl: null"), "the reader would ask a validator elsewhere");
        assertFalse(script.contains("://"), script);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/docs/swagger-ui.css", "/page/scalepan.css"})
    void a_style_sheet_loads_nothing_from_elsewhere(String file) {
        String css = Reply.to(file).body();

        assertFalse(css.contains("@import"), file);
        for (String url : found(FETCHED, css)) {
            assertTrue(
                    url.startsWith("data:") || url.startsWith("/") || url.startsWith("#"),
                    () -> file + " loads " + url);
        }
    }

    @Test
    void a_page_carries_no_script_of_its_own_because_its_policy_would_forbid_it() {
        for (String page : new String[] {"/", "/protein", "/programme", "/docs", "/examples"}) {
            String html = Reply.to(page).body();
            assertFalse(Pattern.compile("<script(?![^>]*\\bsrc=)").matcher(html).find(), page);
            assertFalse(Pattern.compile("\\son\\w+=").matcher(html).find(), page);
        }
    }

    @Test
    void every_link_of_the_front_page_leads_somewhere() {
        for (String link :
                found(Pattern.compile("<a href=\"([^\"]*)\""), Reply.to("/").body())) {
            assertEquals(200, Reply.to(link.replace("&amp;", "&")).status(), link);
        }
    }
}

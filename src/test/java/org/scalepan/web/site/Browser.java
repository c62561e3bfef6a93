package org.scalepan.web.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scalepan.web.Reply;

/** Headless Chromium: pages after their scripts have run. */
final class Browser {
    private static final int MOST_SECONDS = 60;
    private static final Pattern BLOCK = Pattern.compile("<dl data-separator=\"(.)\">(.*?)</dl>", Pattern.DOTALL);
    private static final Pattern CODE = Pattern.compile("<code data-cell=\"(\\w+)\">([^<]*)</code>");

    private Browser() {}

    /** The formulas that a page shows in one style, by the name of their result, after its scripts have run. */
    static Map<String, String> codes(String address, String separator) {
        return inStyle(page(address), separator);
    }

    /** The same without running scripts. */
    static Map<String, String> codes(Reply reply, String separator) {
        return inStyle(reply.body(), separator);
    }

    private static Map<String, String> inStyle(String html, String separator) {
        Map<String, String> codes = new LinkedHashMap<>();
        Matcher block = BLOCK.matcher(html);
        while (block.find()) {
            if (block.group(1).equals(separator)) {
                Matcher code = CODE.matcher(block.group(2));
                while (code.find()) {
                    codes.put(code.group(1), code.group(2).replace("&amp;", "&"));
                }
            }
        }
        return codes;
    }

    /** A page after its scripts have run. */
    static String page(String address) {
        RealClients.skipUnless(
                RealClients.runs("chromium", "--version"), "needs a real Chromium: apt-get install chromium");
        try {
            Path out = Files.createTempFile("page", ".html");
            Path profile = Files.createTempDirectory("browser");
            Process browser = new ProcessBuilder(List.of(
                            "chromium",
                            "--headless",
                            // The page is our own, from this machine; in containers there is no sandbox to be had.
                            "--no-sandbox",
                            "--disable-gpu",
                            "--disable-dev-shm-usage",
                            "--user-data-dir=" + profile,
                            "--virtual-time-budget=5000",
                            "--dump-dom",
                            address))
                    .redirectOutput(out.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!browser.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
                browser.descendants().forEach(ProcessHandle::destroyForcibly);
                browser.destroyForcibly();
                throw new AssertionError("the browser took more than " + MOST_SECONDS + " seconds over " + address);
            }
            return Files.readString(out, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError("no page from " + address, e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("no page from " + address, e);
        }
    }
}

package org.scalepan.web.site;

import java.util.function.Predicate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** Shared by the tests of both views: one browser per class, and a check for console messages and requests to other hosts. */
abstract class PageTest {
    private static final int MOST_TABS = 120;
    private static final int MOST_LOOKS = 5;
    static DrivenBrowser browser;

    @BeforeAll
    static void start() {
        browser = new DrivenBrowser();
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    @AfterEach
    void the_console_is_empty_and_no_other_host_was_called() {
        browser.assertQuiet();
        browser.desk().dark(false);
    }

    /** Presses Tab until the element with this id has the focus. */
    static void tabUntil(String id) {
        tabUntil("#" + id, focused -> id.equals(focused.getAttribute("id")));
    }

    static void tabUntilClass(String name) {
        tabUntil("." + name, focused -> (" " + focused.getAttribute("class") + " ").contains(" " + name + " "));
    }

    static void tabUntilField(String name) {
        tabUntil("the field " + name, focused -> name.equals(focused.getAttribute("name")));
    }

    static void tabUntil(String what, Predicate<WebElement> found) {
        for (int i = 0; i < MOST_TABS; i++) {
            new Actions(browser.driver()).sendKeys(Keys.TAB).perform();
            if (isFocused(found)) {
                return;
            }
        }
        throw new AssertionError("the keyboard does not lead to " + what);
    }

    /** An updated figure may replace the focused element; then the new one is used. */
    private static boolean isFocused(Predicate<WebElement> wanted) {
        for (int looks = 0; ; looks++) {
            try {
                return wanted.test(browser.focused());
            } catch (StaleElementReferenceException e) {
                if (looks == MOST_LOOKS) {
                    throw e;
                }
            }
        }
    }
}

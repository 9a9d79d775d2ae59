package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.tidegate.Needs;
import org.tidegate.work.LetterKind;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/**
 * WCAG 2.2 A and AA on every page, as far as a machine can tell: axe-core 4.11, deque.com/axe, rules tagged wcag2a to wcag22aa.
 * Light on a desk's screen, dark on a phone's; folded parts are opened.
 */
@Tag("browser")
class AccessibilityTest {

    private static final List<String> ADDRESSES = List.of(
            "queue",
            "queue?kind=no-id",
            "queue?words=nobody-of-that-name",
            "outbox",
            "registers",
            "not-heard-from",
            "horizon",
            "horizon?people=0",
            "handover",
            "find",
            "find?words=x",
            "submissions/999",
            "sign-in?error");

    @TempDir
    static Path data;

    private static Morning morning;
    private static Browser browser;
    private static Keyboard keys;
    private static String axe = "";
    private final SoftAssertions found = new SoftAssertions();
    private String look = "";

    @BeforeAll
    static void start() throws Exception {
        Needs.that(Browser.installed(), "chromium and chromedriver");
        morning = Morning.until(
                data, Instant.parse("2026-05-04T09:02:00Z"), "01-", "02-", "24-", "25-", "32-", "33-", "40-", "10-");
        axe = script();
        browser = Browser.open(morning.console.address(), true);
        keys = new Keyboard(browser);
        browser.signIn("anna");
        release(submission("SS-3M1D"));
    }

    private static String script() throws IOException {
        try (var in = Objects.requireNonNull(AccessibilityTest.class.getResourceAsStream("/axe.min.js"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** So that there is one with a result letter. */
    private static void release(SubmissionId id) {
        browser.go("submissions/" + id.value());
        keys.press("r", Keys.SPACE, Keys.TAB, Keys.SPACE, Keys.TAB);
        keys.turn(Keys.ENTER);
        keys.press("r");
        keys.turn(Keys.ENTER);
        assertThat(morning.desk.outbox().of(id)).anyMatch(l -> l.kind() == LetterKind.RESULT);
    }

    @AfterAll
    static void stop() {
        if (morning != null) {
            browser.close();
            morning.close();
        }
    }

    @Test
    void inTheLightOnADesk() {
        browser.size(1280, 900);
        everyPage("light");
    }

    @Test
    void inTheDarkOnAPhone() {
        browser.size(390, 844);
        everyPage("dark");
    }

    private void everyPage(String scheme) {
        look = scheme;
        browser.look("screen", scheme);
        List<String> addresses = new ArrayList<>(ADDRESSES);
        morning.desk
                .store()
                .<List<SubmissionId>>read(tx -> tx.submissions().inStates(EnumSet.allOf(SubmissionState.class)).stream()
                        .map(s -> s.id())
                        .toList())
                .forEach(id -> addresses.add("submissions/" + id.value()));
        for (String address : addresses) {
            browser.go(address);
            check(address);
        }
        pagesBehindForms();
        browser.go("queue");
        keys.press("?");
        check("the list of keys");
        found.assertAll();
    }

    private void pagesBehindForms() {
        browser.go("queue?kind=no-photo");
        browser.driver.findElement(By.cssSelector(".many button")).click();
        check("one answer for many");
        browser.go("submissions/" + submission("SS-T3V7").value());
        keys.turn("v");
        check("preview");
        browser.go("horizon?people=1");
        browser.driver.findElement(By.cssSelector("form.buttons button")).click();
        check("new times");
        browser.go("not-heard-from");
        browser.driver.findElements(By.cssSelector("#many button")).forEach(b -> b.click());
        check("reminders");
    }

    private static SubmissionId submission(String ref) {
        return morning.desk.casebook().find(ref).get(0);
    }

    private void check(String page) {
        browser.driver.executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
        found.assertThat(violations()).as(page + ", " + look).isEmpty();
    }

    private static List<String> violations() {
        browser.driver.executeScript(axe);
        Object all = browser.driver.executeAsyncScript("const done = arguments[arguments.length - 1];"
                + "axe.run({runOnly: ['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa']}).then(r => done(r.violations.map(v =>"
                + " ({id: v.id, where: v.nodes.map(n => n.target.join(' ')).slice(0, 3).join(' | ')}))));");
        return ((List<?>) Objects.requireNonNull(all))
                .stream()
                        .map(v -> ((Map<?, ?>) v).get("id") + " at " + ((Map<?, ?>) v).get("where"))
                        .toList();
    }
}

package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.tidegate.Needs;
import org.tidegate.casework.FamilyMail;
import org.tidegate.work.Submission;

/** Splitting a message from its page: by a form that needs no script, and what a forged form gets. */
class SplitPageTest {

    @TempDir
    Path data;

    private Morning morning;
    private long home;

    @BeforeEach
    void start() throws IOException {
        morning = Morning.until(data, Instant.parse("2026-05-04T06:10:00Z"), "01-nothing-yet");
        morning.desk.intake().take(FamilyMail.raw(), Optional.empty());
        morning.desk.worker().drain();
        home = submissions().get(0).id().value();
    }

    @AfterEach
    void stop() {
        morning.close();
    }

    private List<Submission> submissions() {
        return morning.desk.store().read(tx -> tx.submissions().all());
    }

    private Map<String, String> form(String... more) {
        Map<String, String> form = new TreeMap<>();
        form.put("version", Integer.toString(submissions().get(0).version()));
        form.put("test", FamilyMail.OTHER);
        form.put("why", "one-mail-for-several");
        for (int i = 0; i < more.length; i += 2) {
            form.put(more[i], more[i + 1]);
        }
        return form;
    }

    @Test
    void aFamilysMailIsSplitWithoutScriptAndBothPagesHoldTheRules() throws IOException {
        Needs.that(Browser.installed(), "chromium and chromedriver");
        try (Browser plain = Browser.open(morning.console.address(), false)) {
            plain.signIn("operator");
            plain.go("submissions/" + home);
            plain.driver.findElement(By.cssSelector("details.split summary")).click();
            plain.driver.findElement(By.id("split-test")).sendKeys(FamilyMail.OTHER);
            plain.driver
                    .findElement(By.cssSelector("#split-why option[value=one-mail-for-several]"))
                    .click();
            plain.driver
                    .findElements(By.cssSelector(".share input[value=THERE]"))
                    .get(1)
                    .click();
            plain.driver.findElement(By.cssSelector("details.split button")).click();
            assertThat(plain.driver
                            .findElement(By.cssSelector(".outcome .done"))
                            .getText())
                    .contains("S-" + home + ".1 is for " + FamilyMail.OTHER);
            plain.driver.findElement(By.cssSelector(".kin a")).click();
            assertThat(plain.driver.findElement(By.tagName("h1")).getText()).contains("Maren Tollisker");
            assertThat(plain.driver.findElements(By.cssSelector(".viewer:not(.crop)")))
                    .hasSize(1);
        }
        Axe axe = new Axe();
        try (Browser browser = Browser.open(morning.console.address(), true)) {
            browser.signIn("anna");
            for (Submission s : submissions()) {
                browser.go("submissions/" + s.id().value());
                browser.driver
                        .findElement(By.cssSelector("details.split summary"))
                        .click();
                for (String scheme : List.of("light", "dark")) {
                    browser.look("screen", scheme);
                    assertThat(axe.violations(browser))
                            .as(s.id() + " " + scheme)
                            .isEmpty();
                }
                browser.size(390, 844);
                assertThat(browser.driver.executeScript("return document.documentElement.scrollWidth"))
                        .isEqualTo(390L);
            }
        }
    }

    @Test
    void whatAFormMayNotSayIsRefused() throws Exception {
        Visitor operator = Visitor.signedIn(morning, "operator");
        String path = "submissions/" + home + "/split";
        assertThat(operator.post(path, form("why", "because")).statusCode()).isEqualTo(400);
        assertThat(operator.post(path, form("test", "a b\r\nX: y")).statusCode())
                .isEqualTo(400);
        assertThat(operator.post(path, form("place 0/x", "NOWHERE")).statusCode())
                .isEqualTo(400);
        assertThat(operator.post("submissions/4000000000000/split", form()).statusCode())
                .isEqualTo(404);
        assertThat(operator.post(path, form("place 0/../../keys", "THERE")).statusCode())
                .isEqualTo(302);
        assertThat(operator.get("submissions/" + home).body()).contains("is not there any more");
        assertThat(Visitor.signedIn(morning, "auditor").post(path, form()).statusCode())
                .isEqualTo(403);
        assertThat(submissions()).hasSize(1);
    }
}

package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.tidegate.Needs;
import org.tidegate.casework.Retaining;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** The page of a repeat, and the data protection officer's: for the right people, legible for everybody. */
class KeepingPagesTest {

    private static final Instant NOW = Instant.parse("2026-05-04T09:02:00Z");

    @TempDir
    static Path data;

    private static Morning morning;

    @BeforeAll
    static void start() throws Exception {
        morning = Morning.until(data, NOW, "01-", "32-", "20-");
    }

    @AfterAll
    static void stop() {
        morning.close();
    }

    @Test
    void aRepeatIsRecordedFromTheSubmissionAndItsClockTimesAreTold() {
        Needs.that(Browser.installed(), "chromium and chromedriver");
        try (Browser browser = Browser.open(morning.console.address(), true)) {
            browser.signIn("operator");
            browser.go("find?words=SS-R8L3");
            assertThat(browser.driver.getCurrentUrl()).contains("/submissions/");
            browser.driver.findElement(By.cssSelector("a[href^='/repeat']")).click();
            browser.driver.executeScript("document.getElementById('timer').value = '2026-05-04T09:54'");
            browser.driver.findElement(By.id("mark")).sendKeys("K4TR");
            browser.driver.findElement(By.cssSelector("main form button")).click();
            assertThat(browser.driver
                            .findElement(By.cssSelector(".outcome .done"))
                            .getText())
                    .contains("SS-R8L3#2 is recorded");
            assertThat(browser.driver.findElement(By.tagName("main")).getText())
                    .contains("photograph 10:14 BST to 10:24 BST, send by 10:44 BST", "K4TR");
        }
    }

    @Test
    void whatARepeatsFormMayNotSayIsRefused() throws Exception {
        Visitor operator = Visitor.signedIn(morning, "operator");
        assertThat(operator.get("repeat?test=SS-0000").statusCode()).isEqualTo(404);
        assertThat(operator.get("repeat?test=a%0d%0ab").statusCode()).isEqualTo(400);
        assertThat(operator.post("repeat", Map.of("test", "SS-2K7Q", "timer", "soon"))
                        .statusCode())
                .isEqualTo(400);
        operator.post("repeat", Map.of("test", "SS-2K7Q", "timer", "2026-05-04T23:00", "kit", "SKERRY-20"));
        assertThat(operator.get("repeat?test=SS-2K7Q").body()).contains("not started yet");
        assertThat(morning.desk.repeating().attempts("SS-2K7Q")).hasSize(1);
    }

    @Test
    void theOfficerHoldsBackLiftsAndForgets() throws Exception {
        Visitor officer = Visitor.signedIn(morning, "data-protection-officer");
        assertThat(officer.get("retention").body()).contains("14 days", "8 years");
        assertThat(officer.post("retention/holds", Map.of("number", "S-1", "need", "whim"))
                        .statusCode())
                .isEqualTo(400);
        assertThat(officer.post("retention/holds", Map.of("number", "../1", "need", "dispute"))
                        .statusCode())
                .isEqualTo(400);
        officer.post("retention/holds", Map.of("number", "S-1", "need", "dispute"));
        assertThat(officer.get("retention").body()).contains("Held back: S-1.");
        officer.post("retention/forget", Map.of("number", "S-1", "why", "asked-for", "sure", "true"));
        assertThat(officer.get("retention").body()).contains("lift that first");
        officer.post("retention/holds/lift", Map.of("number", "S-1"));
        officer.get("retention");
        officer.post("retention/forget", Map.of("number", "S-1", "why", "asked-for"));
        assertThat(officer.get("retention").body()).contains("Nothing was done");
        officer.post("retention/forget", Map.of("number", "S-1", "why", "asked-for", "sure", "true"));
        assertThat(officer.get("retention").body()).contains("Forgotten: S-1.", "Messages forgotten: 1");
        Visitor lead = Visitor.signedIn(morning, "clinical-lead");
        assertThat(lead.get("submissions/1").statusCode()).isEqualTo(404);
        assertThat(lead.get("queue").statusCode()).isEqualTo(200);
        assertThat(lead.get("handover").statusCode()).isEqualTo(200);
    }

    @Test
    void axeFindsNothingAndNothingIsWiderThanASmallScreen() throws Exception {
        Needs.that(Browser.installed(), "chromium and chromedriver");
        User officer = new User(
                new UserId("dora"), "dora", java.util.Set.of(org.tidegate.work.Role.DATA_PROTECTION_OFFICER), "", true);
        morning.desk
                .retaining()
                .holdBack(officer, morning.desk.casebook().find("SS-R8L3").get(0), Retaining.Need.DISPUTE);
        Axe axe = new Axe();
        for (Map.Entry<String, String> page : Map.of(
                        "repeat?test=SS-R8L3", "operator", "retention", "data-protection-officer")
                .entrySet()) {
            try (Browser browser = Browser.open(morning.console.address(), true)) {
                browser.signIn(page.getValue());
                for (String scheme : List.of("light", "dark")) {
                    browser.look("screen", scheme);
                    browser.go(page.getKey());
                    assertThat(axe.violations(browser)).as(page + " " + scheme).isEmpty();
                }
                browser.size(390, 844);
                assertThat(browser.driver.executeScript("return document.documentElement.scrollWidth"))
                        .as(page.getKey())
                        .isEqualTo(390L);
            }
        }
    }
}

package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.tidegate.Needs;

/** The cassette by itself: large where a reader reads, and there for an auditor when the photo is gone. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class CropPagesTest {

    private static final Instant NOW = Instant.parse("2026-05-04T09:02:00Z");
    private static final Pattern CROP = Pattern.compile("src=\"/(submissions/1/cassettes/\\d+)\"");

    @TempDir
    static Path data;

    private static Morning morning;

    @BeforeAll
    static void start() throws Exception {
        morning = Morning.until(data, NOW, "01-", "32-");
    }

    @AfterAll
    static void stop() {
        morning.close();
    }

    private static String crop(String page) {
        Matcher crop = CROP.matcher(page);
        assertThat(crop.find()).as(page).isTrue();
        return crop.group(1);
    }

    @Test
    @Order(1)
    void itIsServedToWhoMaySeeTheSubmissionAndUnderNoOther() throws Exception {
        Visitor reader = Visitor.signedIn(morning, "reader");
        String path = crop(reader.get("submissions/1").body());
        var answer = reader.get(path);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains("image/png");
        assertThat(answer.headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(reader.get(path.replace("submissions/1/", "submissions/2/")).statusCode())
                .isEqualTo(404);
        assertThat(reader.get("submissions/1/cassettes/99").statusCode()).isEqualTo(404);
        assertThat(reader.get("submissions/1/cassettes/x").statusCode()).isEqualTo(400);
        assertThat(Visitor.anonymous(morning).get(path).statusCode()).isNotEqualTo(200);
    }

    @Test
    @Order(2)
    void aReaderHasItBesideTheQuestionsAboutItsLines() throws Exception {
        Needs.that(Browser.installed(), "chromium and chromedriver");
        try (Browser browser = Browser.open(morning.console.address(), true)) {
            browser.size(1280, 900);
            browser.signIn("reader");
            Axe axe = new Axe();
            for (String scheme : List.of("light", "dark")) {
                browser.look("screen", scheme);
                browser.go("submissions/1");
                assertThat(axe.violations(browser)).as(scheme).isEmpty();
            }
            assertThat(browser.driver.findElements(By.cssSelector(".reading .crop img")))
                    .singleElement()
                    .satisfies(image -> {
                        assertThat(image.getSize().getWidth()).isGreaterThan(450);
                        assertThat(image.getDomProperty("naturalWidth")).isNotEqualTo("0");
                    });
            assertThat(browser.driver
                            .findElement(By.cssSelector(".reading .caution-here"))
                            .getText())
                    .isNotEmpty();
            assertThat(browser.driver.findElements(By.cssSelector(".crop .places text")))
                    .extracting(e -> e.getDomProperty("textContent"))
                    .containsExactly("T", "C");
            browser.size(390, 844);
            assertThat(browser.driver.executeScript("return document.documentElement.scrollWidth"))
                    .isEqualTo(390L);
        }
    }

    @Test
    @Order(3)
    void anAuditorSeesItAfterThePhotoIsForgotten() throws Exception {
        Visitor operator = Visitor.signedIn(morning, "operator");
        String page = operator.get("submissions/1").body();
        Matcher version = Pattern.compile("name=\"version\" value=\"(\\d+)\"").matcher(page);
        assertThat(version.find()).isTrue();
        operator.post("submissions/1/set-aside", Map.of("version", version.group(1)));
        morning.clock.put(NOW.plus(Duration.ofDays(15)));
        morning.desk.forgetting().drain();
        Visitor auditor = Visitor.signedIn(morning, "auditor");
        String after = auditor.get("submissions/1").body();
        assertThat(after).contains("is forgotten, and its photos with it").doesNotContain("/picture?path=");
        assertThat(auditor.get(crop(after)).statusCode()).isEqualTo(200);
        assertThat(Visitor.signedIn(morning, "operator").get("submissions/1").statusCode())
                .as("there is nothing to answer any more")
                .isEqualTo(200);
        Visitor officer = Visitor.signedIn(morning, "data-protection-officer");
        assertThat(officer.get("retention").body()).contains("Cassettes cut out by themselves");
    }
}

package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.tidegate.Needs;
import org.tidegate.casework.Sending;
import org.tidegate.mailbox.OutgoingMail;
import org.tidegate.mailbox.SendResult;
import org.tidegate.work.OutboxLetter;

/** The pages in a real browser. Needs Debian's chromium and chromium-driver; skipped aloud where they are missing. */
class BrowserTest {

    private static final Instant NOW = Instant.parse("2026-05-04T09:02:00Z");

    @TempDir
    static Path data;

    private static Morning morning;
    private static Browser browser;

    @BeforeAll
    static void start() throws Exception {
        Needs.that(Browser.installed(), "chromium and chromedriver");
        morning = Morning.until(data, NOW, "01-", "10-", "24-", "25-", "32-", "40-");
        browser = Browser.open(morning.console.address(), true);
        browser.size(1280, 900);
        browser.signIn("anna");
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
            morning.close();
        }
    }

    @Test
    void fromOpeningAHeldSubmissionToTheReplyItIsOneAction() {
        browser.go("queue?words=Tariq");
        browser.driver.findElement(By.cssSelector(".row .cover")).click();
        int actions = 0;
        browser.driver.findElement(By.id("send")).click();
        actions++;
        assertThat(browser.driver.findElement(By.cssSelector(".outcome .done")).getText())
                .contains("goes out soon");
        assertThat(actions).isLessThanOrEqualTo(2);
        List<OutboxLetter> letters = morning.desk.outbox().written(NOW.minusSeconds(1), NOW.plusSeconds(1));
        assertThat(letters).hasSizeGreaterThanOrEqualTo(1);
    }

    /** The preview of the HTML part is byte for byte what goes out, and a browser shows it. */
    @Test
    void thePreviewIsExactlyWhatGoesOut() {
        browser.go("queue?words=Erlend");
        browser.driver.findElement(By.cssSelector(".row .cover")).click();
        WebElement text = browser.driver.findElement(By.id("text"));
        text.sendKeys(Keys.chord(Keys.CONTROL, Keys.END), "P.S. <b>Best</b> & \"kind\" regards");
        keys(Keys.ESCAPE, "v");
        WebElement frame = browser.driver.findElement(By.cssSelector("iframe.as-html"));
        String html = frame.getDomAttribute("srcdoc");
        String plain = browser.driver.findElement(By.cssSelector("pre.letter")).getDomProperty("textContent");
        browser.driver.switchTo().frame(frame);
        assertThat(browser.driver.findElement(By.tagName("body")).getText())
                .contains("Dear ", "P.S. <b>Best</b> & \"kind\" regards");
        browser.driver.switchTo().defaultContent();
        keys("s");
        browser.driver.findElement(By.cssSelector(".outcome .done"));
        MimeMultipart parts = sent().stream()
                .filter(p -> body(p, 0).contains("P.S."))
                .findFirst()
                .orElseThrow();
        assertThat(body(parts, 0)).isEqualTo(plain);
        assertThat(body(parts, 1)).isEqualTo(html);
    }

    /** What goes out when the delay is over. */
    private static List<MimeMultipart> sent() {
        List<MimeMultipart> sent = new ArrayList<>();
        morning.clock.put(NOW.plusSeconds(60));
        Sending sending = morning.desk.sending(mail -> {
            sent.add(parts(mail));
            return new SendResult.Accepted();
        });
        while (sending.work().isPresent()) {
            assertThat(sent).hasSizeLessThan(100);
        }
        morning.clock.put(NOW);
        return sent;
    }

    private static MimeMultipart parts(OutgoingMail mail) {
        try {
            Session session = Session.getInstance(new Properties());
            return (MimeMultipart) new MimeMessage(session, new ByteArrayInputStream(mail.raw())).getContent();
        } catch (IOException | MessagingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** @return with the line ends of a page */
    private static String body(MimeMultipart parts, int number) {
        try {
            return String.valueOf(parts.getBodyPart(number).getContent()).replace("\r\n", "\n");
        } catch (IOException | MessagingException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void theKeyboardAloneAnswersALetterAndCallsItBack() {
        browser.go("queue?words=Jonas");
        keys("j");
        assertThat(browser.driver.switchTo().activeElement().getText()).startsWith("Jonas");
        keys(Keys.ENTER);
        browser.driver.findElement(By.id("send"));
        keys("s");
        browser.driver.findElement(By.cssSelector(".outcome .done"));
        keys("z");
        new WebDriverWait(browser.driver, Duration.ofSeconds(10))
                .until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".state"), "held"));
        keys("q");
        new WebDriverWait(browser.driver, Duration.ofSeconds(10)).until(ExpectedConditions.urlContains("/queue"));
    }

    @Test
    void theOverlayListsTheKeysAndCanTurnThemOff() {
        browser.go("queue");
        keys("?");
        WebElement overlay = browser.driver.findElement(By.id("keys"));
        assertThat(overlay.isDisplayed()).isTrue();
        assertThat(overlay.getText()).contains("next row", "send the reply");
        browser.driver.findElement(By.id("keys-on")).click();
        keys(Keys.ESCAPE);
        keys("j");
        assertThat(browser.driver.switchTo().activeElement().getTagName()).isEqualTo("body");
        keys("?");
        browser.driver.findElement(By.id("keys-on")).click();
        keys(Keys.ESCAPE);
    }

    @Test
    void newWorkIsAnnouncedAndMovesNothing() throws IOException {
        browser.go("queue");
        WebElement row = browser.driver.findElement(By.cssSelector(".row"));
        int before = row.getLocation().getY();
        morning.clock.put(NOW.plusSeconds(5));
        morning.desk.intake().take(Morning.raw("27-namesakes.eml"), java.util.Optional.empty());
        morning.desk.worker().drain();
        WebElement fresh = new WebDriverWait(browser.driver, Duration.ofSeconds(20))
                .until(ExpectedConditions.presenceOfElementLocated(By.id("fresh")));
        assertThat(row.getLocation().getY()).isEqualTo(before);
        assertThat(fresh.getText()).startsWith("1 new since");
        morning.clock.put(NOW);
    }

    @Test
    void nothingIsWiderThanASmallScreen() {
        for (String page : List.of(
                "queue", "submissions/1", "outbox", "registers", "not-heard-from", "horizon", "handover", "find")) {
            browser.size(390, 844);
            browser.go(page);
            Object wide = browser.driver.executeScript("return document.documentElement.scrollWidth");
            assertThat(((Number) Objects.requireNonNull(wide)).intValue())
                    .as(page)
                    .isLessThanOrEqualTo(390);
        }
        browser.size(1280, 900);
    }

    @Test
    void withoutJavaScriptALetterIsAnsweredToo() {
        try (Browser plain = Browser.open(morning.console.address(), false)) {
            plain.signIn("anna");
            plain.go("queue?words=Mei-Lin");
            plain.driver.findElement(By.cssSelector(".row .cover")).click();
            plain.driver.findElement(By.id("send")).click();
            assertThat(plain.driver
                            .findElement(By.cssSelector(".outcome .done"))
                            .getText())
                    .contains("goes out soon");
        }
    }

    private static void keys(CharSequence... keys) {
        new Actions(browser.driver).sendKeys(keys).perform();
    }
}

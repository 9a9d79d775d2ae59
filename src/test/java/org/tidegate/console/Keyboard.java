package org.tidegate.console;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A person at a browser who touches nothing but the keys, and reads what is there. */
final class Keyboard {

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final Browser browser;
    private int pressed;

    Keyboard(Browser browser) {
        this.browser = browser;
    }

    void press(CharSequence... keys) {
        for (CharSequence k : keys) {
            pressed += k.length();
        }
        new Actions(browser.driver).sendKeys(keys).perform();
    }

    /** How many keys were pressed so far. */
    int pressed() {
        return pressed;
    }

    /** Presses keys that lead to another page, and waits for it. */
    void turn(CharSequence... keys) {
        WebElement page = browser.driver.findElement(By.tagName("html"));
        press(keys);
        WebDriverWait wait = new WebDriverWait(browser.driver, PATIENCE);
        wait.until(ExpectedConditions.stalenessOf(page));
        wait.until(d -> "complete".equals(browser.driver.executeScript("return document.readyState")));
    }

    void signIn(String name) {
        browser.go("sign-in");
        press(name, Keys.TAB, Morning.PASSWORD);
        turn(Keys.ENTER);
    }

    WebElement focused() {
        return browser.driver.switchTo().activeElement();
    }

    /** What stands at each place that fits. */
    List<String> texts(String selector) {
        Object all = browser.driver.executeScript(
                "return Array.from(document.querySelectorAll(arguments[0])).map(e => e.textContent.trim())", selector);
        return ((List<?>) Objects.requireNonNull(all))
                .stream().map(String::valueOf).toList();
    }

    boolean sees(String selector) {
        return !texts(selector).isEmpty();
    }
}

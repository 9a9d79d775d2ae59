package org.tidegate.console;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Debian's headless Chromium, driven by its own driver. */
final class Browser implements AutoCloseable {

    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final Duration SLOW = Duration.ofSeconds(30);

    final ChromeDriver driver;
    private final String address;

    private Browser(ChromeDriver driver, String address) {
        this.driver = driver;
        this.address = address;
    }

    static boolean installed() {
        return Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER);
    }

    static Browser open(String address, boolean javaScript) {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM.toString());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--hide-scrollbars",
                "--lang=en-GB",
                "--force-color-profile=srgb");
        if (!javaScript) {
            options.setExperimentalOption("prefs", Map.of("profile.managed_default_content_settings.javascript", 2));
        }
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .usingAnyFreePort()
                .withLogFile(new File("/dev/null"))
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        driver.manage().timeouts().implicitlyWait(Duration.ofSeconds(5));
        return new Browser(driver, address);
    }

    void go(String path) {
        driver.get(address + path);
    }

    void signIn(String name) {
        go("sign-in");
        driver.findElement(By.id("username")).sendKeys(name);
        driver.findElement(By.id("password")).sendKeys(Morning.PASSWORD);
        driver.findElement(By.cssSelector("form button[type=submit]")).click();
        // A page asked for before the answer is there would break off the signing in.
        new WebDriverWait(driver, SLOW).until(ExpectedConditions.not(ExpectedConditions.urlContains("/sign-in")));
    }

    /** Width and height of the page itself, in CSS pixels. */
    void size(int width, int height) {
        driver.manage().window().setSize(new Dimension(width, height));
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** @param media {@code screen} or {@code print}; @param scheme {@code light} or {@code dark} */
    void look(String media, String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "media",
                        media,
                        "features",
                        java.util.List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    byte[] picture() {
        return driver.getScreenshotAs(OutputType.BYTES);
    }

    @Override
    public void close() {
        driver.quit();
    }
}

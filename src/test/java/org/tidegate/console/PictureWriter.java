package org.tidegate.console;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesFolder;

/** Pictures of the pages, to be looked at: each at two widths, light, dark and as printed. Run with the folder to write to. */
final class PictureWriter {

    private static final Instant MIDMORNING = Instant.parse("2026-05-04T09:32:00Z");

    /** When the shift begins after the sample's morning, by the hours of a night. */
    private static final Instant SHIFT = Instant.parse("2026-05-04T12:00:00Z");

    private PictureWriter() {}

    private record Page(String name, String path) {}

    private record Look(String name, int width, int height, String media, String scheme) {}

    private static final List<Look> LOOKS = List.of(
            new Look("1280-light", 1280, 900, "screen", "light"),
            new Look("1280-dark", 1280, 900, "screen", "dark"),
            new Look("390-light", 390, 844, "screen", "light"),
            new Look("390-dark", 390, 844, "screen", "dark"),
            new Look("print", 794, 1123, "print", "light"));

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        Path data = Files.createTempDirectory("tidegate-pictures");
        Instant time = arguments.length > 1 ? Instant.parse(arguments[1]) : MIDMORNING;
        try (Morning morning = Morning.until(data, time);
                Browser browser = Browser.open(morning.console.address(), true)) {
            pictures(browser, folder, pages(morning, time));
        }
        Path night = Files.createTempDirectory("tidegate-night");
        Rules rules = RulesFolder.night(night.resolve("rules"));
        try (Morning morning = Morning.unattended(rules, night.resolve("data"), SHIFT);
                Browser browser = Browser.open(morning.console.address(), true)) {
            morning.desk.unattended().work();
            pictures(browser, folder, List.of(new Page("handover", "handover")));
        }
    }

    private static void pictures(Browser browser, Path folder, List<Page> pages) throws IOException {
        browser.signIn("anna");
        for (Page page : pages) {
            for (Look look : LOOKS) {
                browser.size(look.width(), look.height());
                browser.look(look.media(), look.scheme());
                browser.go(page.path());
                Files.write(folder.resolve(page.name() + "-" + look.name() + ".png"), browser.picture());
            }
        }
    }

    private static List<Page> pages(Morning morning, Instant time) {
        String held = morning.desk.casebook().queue(time).stream()
                .filter(r -> r.who().contains("Tariq") || r.who().contains("Erlend"))
                .map(r -> "submissions/" + r.id().value())
                .findFirst()
                .orElse("queue");
        return List.of(
                new Page("queue", "queue"),
                new Page("submission", held),
                new Page("not-heard-from", "not-heard-from"),
                new Page("horizon", "horizon"));
    }
}

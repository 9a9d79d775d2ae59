package org.tidegate.examination.timing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tidegate.finding.PictureFinding;
import org.tidegate.rules.TimingRules;

/** Whether one device made photo and message: the mail program names the camera, and nothing tells a webmail or desktop program. */
final class SamePhone {

    /** Mail programs name their device in a comment such as {@code (K5; phone)}. */
    private static final Pattern DEVICE = Pattern.compile("\\(([^();]+);[^()]*\\)");

    private SamePhone() {}

    static boolean made(Optional<String> mailProgram, PictureFinding picture, TimingRules rules) {
        if (mailProgram.isEmpty()) {
            return false;
        }
        String program = plain(mailProgram.get());
        List<String> camera = Stream.concat(picture.model().stream(), picture.make().stream())
                .map(SamePhone::plain)
                .toList();
        if (rules.notAPhone().stream().anyMatch(word -> names(program, plain(word)))) {
            return false;
        }
        if (paired(program, camera, rules)) {
            return true;
        }
        Matcher device = DEVICE.matcher(mailProgram.get());
        if (device.find() && picture.model().isPresent()) {
            String model = plain(picture.model().get());
            return names(plain(device.group(1)), model) || names(model, plain(device.group(1)));
        }
        return camera.stream().anyMatch(name -> names(program, name));
    }

    private static boolean paired(String program, List<String> camera, TimingRules rules) {
        return rules.samePhone().stream()
                .anyMatch(pair -> names(program, plain(pair.program()))
                        && camera.stream().anyMatch(name -> names(name, plain(pair.camera()))));
    }

    /** Whether {@code text} holds {@code name} as whole words. */
    private static boolean names(String text, String name) {
        return name.length() >= 2 && (" " + text + " ").contains(" " + name + " ");
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }
}

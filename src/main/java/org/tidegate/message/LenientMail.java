package org.tidegate.message;

import java.util.Map;
import java.util.TreeMap;

/**
 * Switches the mail library to lenient decoding. It reads these settings once, when its classes load, so the program calls
 * this first. {@link MessageReader} does its own reading and gives the same result whether or not this was called.
 */
public final class LenientMail {

    private static final Map<String, String> SETTINGS = new TreeMap<>(Map.of(
            "mail.mime.parameters.strict", "false",
            "mail.mime.ignoreunknownencoding", "true",
            "mail.mime.base64.ignoreerrors", "true",
            "mail.mime.uudecode.ignoreerrors", "true",
            "mail.mime.decodefilename", "true",
            "mail.mime.decodetext.strict", "false",
            "mail.mime.multipart.allowempty", "true",
            "mail.mime.address.strict", "false"));

    private LenientMail() {}

    /** Sets what nobody has set on the command line. */
    public static void switchOn() {
        SETTINGS.forEach((key, value) -> {
            if (System.getProperty(key) == null) {
                System.setProperty(key, value);
            }
        });
    }
}

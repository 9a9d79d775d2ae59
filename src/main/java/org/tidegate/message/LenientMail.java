package org.tidegate.message;

import java.util.Map;

/** Switches the mail library's lenient decoding on; it reads these system properties once, when its classes load. */
public final class LenientMail {

    private static final Map<String, String> LENIENT = Map.ofEntries(
            Map.entry("mail.mime.parameters.strict", "false"),
            Map.entry("mail.mime.ignoreunknownencoding", "true"),
            Map.entry("mail.mime.base64.ignoreerrors", "true"),
            Map.entry("mail.mime.uudecode.ignoreerrors", "true"),
            Map.entry("mail.mime.quotedprintable.ignoreerrors", "true"),
            Map.entry("mail.mime.decodefilename", "true"),
            Map.entry("mail.mime.decodeparameters", "true"),
            Map.entry("mail.mime.decodetext.strict", "false"),
            Map.entry("mail.mime.address.strict", "false"),
            Map.entry("mail.mime.multipart.ignoremissingendboundary", "true"),
            Map.entry("mail.mime.multipart.ignoremissingboundaryparameter", "true"),
            Map.entry("mail.mime.multipart.ignoreexistingboundaryparameter", "false"),
            Map.entry("mail.mime.multipart.allowempty", "true"),
            Map.entry("mail.mime.ignoremultipartencoding", "true"),
            Map.entry("mail.mime.allowutf8", "true"));

    private LenientMail() {}

    /** To be called before any class of the mail library is used. */
    public static void switchOn() {
        LENIENT.forEach(System::setProperty);
    }
}

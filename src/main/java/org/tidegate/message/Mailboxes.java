package org.tidegate.message;

import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Address lists (RFC 5322 §3.4), as far as they can be made out. */
public final class Mailboxes {

    private static final Pattern BARE = Pattern.compile("[^\\s<>\",;:()]+@[^\\s<>\",;:()]+");

    private Mailboxes() {}

    static List<Mailbox> read(Headers headers, String name) {
        List<Mailbox> found = new ArrayList<>();
        headers.all(name).forEach(f -> found.addAll(parse(f.value())));
        return List.copyOf(found);
    }

    /** Mailboxes of a field value, as far as they can be made out. */
    public static List<Mailbox> parse(String value) {
        List<Mailbox> found = new ArrayList<>();
        try {
            for (InternetAddress a : InternetAddress.parseHeader(value, false)) {
                if (a.getAddress() != null && a.getAddress().indexOf('@') > 0) {
                    found.add(new Mailbox(Optional.ofNullable(a.getPersonal()).map(Headers::decode), a.getAddress()));
                }
            }
        } catch (AddressException | RuntimeException e) {
            found.clear();
        }
        if (found.isEmpty()) {
            Matcher m = BARE.matcher(value);
            if (m.find()) {
                String before =
                        value.substring(0, m.start()).replaceAll("[<\"]", "").strip();
                found.add(new Mailbox(
                        before.isEmpty() ? Optional.empty() : Optional.of(Headers.decode(before)), m.group()));
            }
        }
        return found;
    }

    /** Message identifiers without their angle brackets, in order (RFC 5322 §3.6.4). */
    static List<String> identifiers(Headers headers, String... names) {
        List<String> ids = new ArrayList<>();
        for (String name : names) {
            for (Headers.Field f : headers.all(name)) {
                Matcher m = Pattern.compile("<([^<>\\s]+)>").matcher(f.value());
                while (m.find()) {
                    if (!ids.contains(m.group(1))) {
                        ids.add(m.group(1));
                    }
                }
            }
        }
        return List.copyOf(ids);
    }
}

package org.tidegate.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tidegate.booking.AppointmentBook;
import org.tidegate.message.HeaderDate;
import org.tidegate.message.Limits;
import org.tidegate.message.MessageReader;
import org.tidegate.work.Outage;

/** The sample mailbox: its messages in the order in which they arrived, and its appointment book. */
final class SampleMorning {

    /** Our own mail server was down, says the sample's register. */
    static final Outage OUTAGE = new Outage(
            Instant.parse("2026-05-04T11:40:00Z"), Instant.parse("2026-05-04T12:35:00Z"), "power cut at the quay");

    static final String QUARANTINED_LOT = "SK2604Q";

    private static final String FOLDER = "sample-mailbox/";

    private SampleMorning() {}

    /** One message and when our own server took it. */
    record Mail(String file, byte[] raw, Instant arrived) {}

    static List<Mail> messages() {
        List<Mail> all = new ArrayList<>();
        for (String row : text("expected.csv").lines().skip(1).toList()) {
            String file = row.substring(0, row.indexOf(','));
            byte[] raw = bytes(file);
            all.add(new Mail(file, raw, arrived(raw)));
        }
        all.sort(Comparator.comparing(Mail::arrived).thenComparing(Mail::file));
        return all;
    }

    private static Instant arrived(byte[] raw) {
        return MessageReader.read(raw, Limits.standard()).envelope().hops().stream()
                .flatMap(h -> h.time().stream())
                .map(HeaderDate::instant)
                .findFirst()
                .orElse(Instant.EPOCH);
    }

    static AppointmentBook book() {
        try {
            Path copy = Files.createTempFile("appointments", ".csv");
            try {
                Files.write(copy, bytes("appointments.csv"));
                return Books.read(copy);
            } finally {
                Files.delete(copy);
            }
        } catch (IOException e) {
            throw new Refusal("the sample's appointment book cannot be read: " + e.getMessage(), e);
        }
    }

    static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String name) {
        try (InputStream in = SampleMorning.class.getClassLoader().getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new Refusal("the program was built without its sample mailbox (" + name + " is missing).");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new Refusal("the sample mailbox cannot be read: " + e.getMessage(), e);
        }
    }
}

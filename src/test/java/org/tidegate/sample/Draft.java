package org.tidegate.sample;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A message of the sample morning in the making. Everything has the default of a participant who does all right; a story changes
 * what its point is. Clock times are true wall times of Monday 4 May 2026, Europe/London.
 */
final class Draft {

    static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final String OWN = "mx.skarrasound.example";

    final String file;
    final Booking booking;
    private String subject;
    private String body = "Hello,\n\nplease find the photo of my cassette and my card attached.\n";
    private String from;
    private String displayName;
    private Phone phone = Phone.FULMAR;
    private int phoneFastSeconds;
    private ZoneId phoneZone = LONDON;
    private String sent;
    private int transitSeconds = 11;
    private int queuedSeconds;
    private String dmarc = "pass";
    private final List<String> extraHeaders = new ArrayList<>();
    private @Nullable String inReplyTo;
    private final List<Attached> files = new ArrayList<>();

    private record Attached(String type, String name, byte[] content) {}

    Draft(String file, Booking booking, String stated, String sent) {
        this.file = file;
        this.booking = booking;
        this.sent = sent;
        this.subject = booking.name() + ", " + stated + ", " + clinicName(booking.clinic());
        this.from = booking.email();
        this.displayName = booking.name();
    }

    private static String clinicName(String code) {
        return switch (code) {
            case "QUAY" -> "Quay clinic";
            case "PIER" -> "North Pier clinic";
            default -> "Heliport clinic";
        };
    }

    Draft subject(String text) {
        subject = text;
        return this;
    }

    Draft body(String text) {
        body = text;
        return this;
    }

    Draft from(String name, String address) {
        displayName = name;
        from = address;
        return this;
    }

    Draft phone(Phone device) {
        phone = device;
        return this;
    }

    Draft phoneFast(int seconds) {
        phoneFastSeconds = seconds;
        return this;
    }

    Draft phoneZone(String zone) {
        phoneZone = ZoneId.of(zone);
        return this;
    }

    /** The sender's provider sat on the message for so long between its own two servers. */
    Draft queuedFor(int seconds) {
        queuedSeconds = seconds;
        return this;
    }

    Draft dmarc(String result) {
        dmarc = result;
        return this;
    }

    Draft header(String name, String value) {
        extraHeaders.add(name + ": " + value);
        return this;
    }

    Draft inReplyTo(String messageId) {
        inReplyTo = messageId;
        return this;
    }

    /** Attaches a photo as the phone writes it, with its clock and, where it writes one, its offset. */
    Draft photo(Shot shot, String taken, long seed) {
        ZonedDateTime shown = phoneTime(taken);
        Optional<String> offset =
                phone.writesOffset() ? Optional.of(shown.getOffset().getId().replace("Z", "+00:00")) : Optional.empty();
        byte[] jpeg = ExifWriter.write(
                Shots.jpeg(shot, booking, seed), phone.make(), phone.model(), shown.toLocalDateTime(), offset);
        return attach("image/jpeg", "IMG_" + (1000 + seed) + ".jpg", jpeg);
    }

    /** Attaches a photo of which the mail program stripped every fact. */
    Draft strippedPhoto(Shot shot, long seed) {
        return attach("image/jpeg", "image" + seed + ".jpg", Shots.jpeg(shot, booking, seed));
    }

    Draft attach(String type, String name, byte[] content) {
        files.add(new Attached(type, name, content));
        return this;
    }

    String messageId() {
        return file.replace(".eml", "") + "@" + from.substring(from.indexOf('@') + 1);
    }

    byte[] bytes() {
        String host = from.substring(from.indexOf('@') + 1);
        ZonedDateTime true0 = wall(sent);
        ZonedDateTime handed = true0.plusSeconds(2);
        ZonedDateTime out = handed.plusSeconds(3L + queuedSeconds);
        ZonedDateTime arrived = handed.plusSeconds(transitSeconds + (long) queuedSeconds);
        MailWriter mail = new MailWriter()
                .header("Return-Path", "<" + from + ">")
                .header(
                        "Authentication-Results",
                        OWN + "; spf=pass smtp.mailfrom=" + host + ";\r\n\tdkim="
                                + (dmarc.equals("fail") ? "fail" : "pass") + " header.d=" + host + "; dmarc=" + dmarc
                                + " header.from=" + host)
                .header(
                        "Received",
                        "from out." + host + " (out." + host + " [198.51.100.20])\r\n\tby " + OWN
                                + " with ESMTPS id " + Integer.toHexString(file.hashCode())
                                + "\r\n\tfor <intake@skarrasound.example>; "
                                + MailWriter.date(arrived))
                .header(
                        "Received",
                        "from smtp." + host + " (smtp." + host + " [198.51.100.21])\r\n\tby out." + host
                                + " with ESMTP; " + MailWriter.date(out))
                .header(
                        "Received",
                        "from [203.0.113.7] (client." + host + " [203.0.113.7])\r\n\tby smtp." + host
                                + " with ESMTPSA; " + MailWriter.date(handed));
        extraHeaders.forEach(h -> mail.header(h.substring(0, h.indexOf(':')), h.substring(h.indexOf(':') + 2)));
        mail.header("From", MailWriter.encoded(displayName) + " <" + from + ">")
                .header("To", "<intake@skarrasound.example>")
                .header("Subject", MailWriter.encoded(subject))
                .header("Date", MailWriter.date(phoneTime(sent)))
                .header("Message-ID", "<" + messageId() + ">");
        if (inReplyTo != null) {
            mail.header("In-Reply-To", "<" + inReplyTo + ">").header("References", "<" + inReplyTo + ">");
        }
        mail.header(phone == Phone.WEBMAIL ? "User-Agent" : "X-Mailer", phone.mailProgram())
                .text(body);
        files.forEach(f -> mail.file(f.type(), f.name(), f.content()));
        return mail.bytes("=_" + Integer.toHexString(file.hashCode()) + "tide");
    }

    private ZonedDateTime phoneTime(String wallTime) {
        return wall(wallTime).plusSeconds(phoneFastSeconds).withZoneSameInstant(phoneZone);
    }

    private static ZonedDateTime wall(String time) {
        return LocalDateTime.parse("2026-05-04T" + time).atZone(LONDON);
    }

    Story toRead(String photo, String sentVerdict, String told) {
        return new Story(
                file, bytes(), "match", booking.ref(), "to-read", List.of(), List.of(), photo, sentVerdict, told);
    }

    Story held(String photo, String sentVerdict, String told, String... codes) {
        List<String> holds = List.of(codes).stream().sorted().toList();
        return new Story(file, bytes(), "match", booking.ref(), "held", holds, List.of(), photo, sentVerdict, told);
    }

    Story unmatched(String outcome, String told, String... codes) {
        List<String> holds = List.of(codes).stream().sorted().toList();
        return new Story(file, bytes(), outcome, "", "held", holds, List.of(), "-", "-", told);
    }

    Story aside(String told) {
        return new Story(file, bytes(), "none", "", "aside", List.of(), List.of(), "-", "-", told);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s (%s)", file, booking.ref());
    }
}

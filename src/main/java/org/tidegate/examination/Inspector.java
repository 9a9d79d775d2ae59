package org.tidegate.examination;

import java.time.Instant;
import java.util.Optional;
import org.tidegate.examination.picture.OutsideDecoder;
import org.tidegate.examination.picture.PictureExaminer;
import org.tidegate.examination.picture.PictureResult;
import org.tidegate.examination.picture.mrz.MrzReader;
import org.tidegate.examination.subject.CoveringNote;
import org.tidegate.examination.subject.StatedText;
import org.tidegate.examination.subject.SubjectReader;
import org.tidegate.examination.subject.UrgentWords;
import org.tidegate.examination.timing.Arrival;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.Findings;
import org.tidegate.message.Envelope;
import org.tidegate.message.HeaderDate;
import org.tidegate.message.Limits;
import org.tidegate.message.MailMessage;
import org.tidegate.message.Mailbox;
import org.tidegate.message.MessageReader;
import org.tidegate.message.RecordedKey;
import org.tidegate.rules.LimitRules;
import org.tidegate.rules.Rules;

/** {@code inspect}: everything that one message shows by itself. Pure: the same bytes, facts and rules give the same findings. */
public final class Inspector {

    private final Rules rules;
    private final SubjectReader subjects;
    private final PictureExaminer pictures;

    public Inspector(Rules rules) {
        this(rules, OutsideDecoder.NONE);
    }

    /** With a decoder that is installed here; that it is, is one of the recorded delivery facts. */
    public Inspector(Rules rules, OutsideDecoder outside) {
        this(rules, new PictureExaminer(rules, outside, new MrzReader()));
    }

    private Inspector(Rules rules, PictureExaminer pictures) {
        this.rules = rules;
        this.subjects = new SubjectReader(rules);
        this.pictures = pictures;
    }

    /** Never fails on any bytes: what cannot be read becomes a recorded problem. */
    public Findings inspect(byte[] raw, DeliveryFacts facts) {
        return look(raw, facts).findings();
    }

    /** The same, with the cassettes of its pictures by themselves. */
    public Inspected look(byte[] raw, DeliveryFacts facts) {
        MailMessage message = MessageReader.read(raw, limits(rules.limits()), RecordedKey.source(facts.dkimKeys()));
        Envelope envelope = message.envelope();
        PictureResult seen = pictures.examine(message.attachments(), message.problems(), facts);
        String words = envelope.subject().orElse("") + "\n" + envelope.text();
        Findings findings = new Findings(
                Findings.FORMAT,
                envelope,
                facts.delivered(),
                subjects.read(stated(envelope, facts)),
                UrgentWords.find(words, rules.subjects()),
                CoveringNote.only(envelope.text(), rules.subjects()),
                seen.pictures(),
                seen.problems(),
                message.problems());
        return new Inspected(findings, seen.crops());
    }

    private StatedText stated(Envelope envelope, DeliveryFacts facts) {
        Optional<Mailbox> from = envelope.from().stream().findFirst();
        return new StatedText(
                envelope.subject(),
                envelope.text(),
                from.flatMap(Mailbox::displayName),
                from.map(Mailbox::address),
                received(envelope, facts));
    }

    /** When it came, for reading dates: our own line, else the best that the headers offer. */
    private Instant received(Envelope envelope, DeliveryFacts facts) {
        return Arrival.of(envelope, facts.delivered(), rules.timing())
                .time()
                .or(() -> envelope.hops().stream()
                        .flatMap(h -> h.time().stream())
                        .map(HeaderDate::instant)
                        .findFirst())
                .or(() -> envelope.date().map(HeaderDate::instant))
                .orElse(Instant.EPOCH);
    }

    private static Limits limits(LimitRules l) {
        return new Limits(
                l.messageBytes(),
                l.headerBytes(),
                l.headerFields(),
                l.parts(),
                l.depth(),
                l.attachmentBytes(),
                l.totalBytes(),
                l.textChars(),
                l.pdfPages(),
                l.pdfImages());
    }
}

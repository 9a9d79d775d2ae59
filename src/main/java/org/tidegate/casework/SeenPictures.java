package org.tidegate.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tidegate.examination.checks.Photos;
import org.tidegate.examination.picture.SeenBefore;
import org.tidegate.examination.picture.SeenWriting;
import org.tidegate.finding.Findings;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.Fingerprints;
import org.tidegate.rules.PictureRules;
import org.tidegate.store.Links;
import org.tidegate.store.StoredJson;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;

/** The fingerprints of all pictures that could be photos, kept in memory and caught up from the store. For one thread at a time. */
final class SeenPictures {

    private static final int AT_ONCE = 1_000;

    private final PictureRules rules;
    private SeenBefore seen;
    private SeenWriting writing;
    private long caughtUp;

    SeenPictures(PictureRules rules) {
        this.rules = rules;
        this.seen = new SeenBefore(rules.sameWithin());
        this.writing = new SeenWriting(rules.sameWritingWithin());
    }

    void keep(Tx tx, MessageId id, Findings findings) {
        for (int i : Photos.of(findings).all()) {
            PictureFinding picture = findings.pictures().get(i);
            picture.fingerprints()
                    .ifPresent(f -> tx.links().keepPicture(id, picture.path(), StoredJson.write(f.compared())));
        }
    }

    void catchUp(Tx tx) {
        List<Links.Picture> more;
        do {
            more = tx.links().picturesAfter(caughtUp, AT_ONCE);
            for (Links.Picture p : more) {
                Fingerprints prints = StoredJson.read(p.fingerprints(), Fingerprints.class);
                seen.add(p.message().value(), prints);
                prints.written().forEach(w -> writing.add(p.message().value(), w));
                caughtUp = p.id();
            }
        } while (more.size() == AT_ONCE);
    }

    /** Forgets what was kept of a message, as the store has. */
    void forget(MessageId id) {
        seen.forget(id.value());
        writing.forget(id.value());
    }

    /** Starts over: what was caught up may have been undone. */
    void reset() {
        seen = new SeenBefore(rules.sameWithin());
        writing = new SeenWriting(rules.sameWritingWithin());
        caughtUp = 0;
    }

    /** Messages that carry the same picture, whichever came first. */
    Set<MessageId> carriers(PictureFinding picture) {
        Set<MessageId> all = new TreeSet<>();
        picture.fingerprints().ifPresent(f -> seen.find(f).forEach(s -> all.add(new MessageId(s.owner()))));
        return all;
    }

    /** Messages that show a cassette with the same writing, whichever came first. */
    Set<MessageId> alike(PictureFinding picture) {
        Set<MessageId> all = new TreeSet<>();
        picture.fingerprints().stream()
                .flatMap(f -> f.written().stream())
                .forEach(w -> writing.find(w).forEach(owner -> all.add(new MessageId(owner))));
        return all;
    }

    /** Messages that share a picture, or a cassette by its writing. */
    Set<MessageId> tied(Findings findings) {
        Set<MessageId> all = new TreeSet<>();
        for (int i : Photos.of(findings).all()) {
            all.addAll(carriers(findings.pictures().get(i)));
            all.addAll(alike(findings.pictures().get(i)));
        }
        return all;
    }

    /** The photos of the cassette, or what might be one. */
    static List<PictureFinding> cassettePhotos(Findings findings) {
        List<PictureFinding> photos = new ArrayList<>();
        Photos.of(findings)
                .cassette()
                .forEach(i -> photos.add(findings.pictures().get(i)));
        return photos;
    }
}

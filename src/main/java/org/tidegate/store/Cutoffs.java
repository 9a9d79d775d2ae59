package org.tidegate.store;

import java.time.Instant;
import java.time.Period;
import java.time.ZoneId;
import org.tidegate.rules.RetentionRules;

/** Until when something must have been taken for its time to be up, by the term that it is kept under; each exclusive. */
public record Cutoffs(
        Instant identityPictures,
        Instant pictures,
        Instant cassettes,
        Instant messages,
        Instant aside,
        Instant results,
        Instant fingerprints) {

    /** @param zone in which days, months and years are counted */
    public static Cutoffs at(Instant time, RetentionRules rules, ZoneId zone) {
        return new Cutoffs(
                before(time, rules.identityPictures(), zone),
                before(time, rules.pictures(), zone),
                before(time, rules.cassettes(), zone),
                before(time, rules.messages(), zone),
                before(time, rules.aside(), zone),
                before(time, rules.results(), zone),
                before(time, rules.fingerprints(), zone));
    }

    private static Instant before(Instant time, Period term, ZoneId zone) {
        return time.atZone(zone).minus(term).toInstant();
    }
}

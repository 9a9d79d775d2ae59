package org.tidegate.examination.timing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tidegate.message.AuthenticationResult;
import org.tidegate.message.Envelope;
import org.tidegate.message.TraceHop;
import org.tidegate.rules.TimingRules;

/** Authentication-Results that may be believed: from our own authserv-id and above the boundary hop (RFC 8601 §5, §7.1). */
public final class TrustedResults {

    private TrustedResults() {}

    /** All results that our own servers vouch for, topmost first. */
    public static List<AuthenticationResult> of(Envelope envelope, TimingRules rules) {
        Arrival.OwnMail own = Arrival.OwnMail.of(rules);
        Optional<Integer> boundary =
                Arrival.of(envelope, Optional.empty(), rules).boundary().map(TraceHop::position);
        return envelope.authentication().stream()
                .filter(r -> own.host(r.authservId()))
                .filter(r -> boundary.isPresent() && r.hopsAbove() <= boundary.get())
                .toList();
    }

    /** The topmost trusted {@code dmarc} result in lower case, such as {@code pass} or {@code fail}; empty where there is none. */
    public static Optional<String> dmarc(Envelope envelope, TimingRules rules) {
        return of(envelope, rules).stream()
                .filter(r -> r.method().equalsIgnoreCase("dmarc"))
                .map(r -> r.result().toLowerCase(Locale.ROOT))
                .findFirst();
    }
}

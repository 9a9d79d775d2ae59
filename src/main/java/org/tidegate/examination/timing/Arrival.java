package org.tidegate.examination.timing;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tidegate.message.Envelope;
import org.tidegate.message.HeaderDate;
import org.tidegate.message.TraceHop;
import org.tidegate.rules.TimingRules;

/**
 * Where a message crossed into our own mail system: the first {@code Received} line from the top that one of our hosts wrote and
 * whose observed peer lies outside our networks. Nothing below it is ours, whatever name it bears.
 *
 * @param boundary that line; empty where there is none
 * @param time when it came: the boundary's time where its zone is known, else the delivery time that the caller knew
 * @param foreign the lines below the boundary with a time, the first one handed over first; all lines where there is no boundary
 */
public record Arrival(Optional<TraceHop> boundary, Optional<Instant> time, List<TraceHop> foreign) {

    public Arrival {
        foreign = List.copyOf(foreign);
    }

    /** Finds the boundary by the rules' {@code own_hosts} and {@code own_networks}. */
    public static Arrival of(Envelope envelope, Optional<Instant> delivered, TimingRules rules) {
        OwnMail own = OwnMail.of(rules);
        List<TraceHop> hops = envelope.hops();
        Optional<TraceHop> boundary = boundary(hops, own);
        Optional<Instant> stamped = boundary.flatMap(TraceHop::time).flatMap(HeaderDate::known);
        return new Arrival(boundary, stamped.or(() -> delivered), below(hops, boundary));
    }

    private static Optional<TraceHop> boundary(List<TraceHop> hops, OwnMail own) {
        return hops.stream()
                .filter(h -> h.by().filter(own::host).isPresent())
                .filter(h -> h.peer().filter(p -> !own.address(p)).isPresent())
                .findFirst();
    }

    private static List<TraceHop> below(List<TraceHop> hops, Optional<TraceHop> boundary) {
        int last = boundary.map(TraceHop::position).orElse(-1);
        return hops.stream()
                .filter(h -> h.position() > last && h.time().isPresent())
                .sorted((a, b) -> Integer.compare(b.position(), a.position()))
                .toList();
    }

    /** Our own hosts and networks, ready to be asked. */
    record OwnMail(List<String> hosts, List<Cidr> networks) {

        static OwnMail of(TimingRules rules) {
            return new OwnMail(
                    rules.ownHosts().stream().map(OwnMail::plain).toList(),
                    rules.ownNetworks().stream()
                            .flatMap(n -> Cidr.parse(n).stream())
                            .toList());
        }

        boolean host(String name) {
            return hosts.contains(plain(name));
        }

        boolean address(String address) {
            return networks.stream().anyMatch(n -> n.contains(address));
        }

        private static String plain(String name) {
            String lower = name.strip().toLowerCase(Locale.ROOT);
            return lower.endsWith(".") ? lower.substring(0, lower.length() - 1) : lower;
        }
    }
}

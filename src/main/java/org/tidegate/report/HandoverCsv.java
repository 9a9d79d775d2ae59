package org.tidegate.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tidegate.report.Handover.Act;
import org.tidegate.report.Handover.Call;
import org.tidegate.report.Handover.Case;
import org.tidegate.rules.Rules;
import org.tidegate.work.PolicyAct;

/** A handover as CSV (RFC 4180), a row an open submission, then what went out by itself; times as RFC 3339 with offset. */
public final class HandoverCsv {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader(
                    "what",
                    "submission",
                    "ref",
                    "clinic",
                    "codes",
                    "arrived",
                    "until",
                    "due",
                    "needed_by",
                    "by_itself",
                    "when",
                    "letter")
            .get();

    private final Clocks clocks;

    public HandoverCsv(Rules rules) {
        this.clocks = new Clocks(rules.timing().zone());
    }

    public String write(Handover h) {
        StringBuilder out = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(out, FORMAT)) {
            for (Case c : h.cases()) {
                open(csv, c);
            }
            for (Act a : h.acts()) {
                act(csv, a);
            }
            for (Call c : h.calls()) {
                csv.printRecord(
                        "on-call",
                        c.id(),
                        "",
                        "",
                        c.why(),
                        "",
                        "",
                        "",
                        "",
                        "",
                        clocks.exact(c.when()),
                        c.letter().code());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private void open(CSVPrinter csv, Case c) throws IOException {
        csv.printRecord(
                c.standing().code(),
                c.id(),
                c.test().orElse(""),
                c.clinic().orElse(""),
                String.join(" ", c.codes()),
                clocks.exact(c.arrived()),
                time(c.until()),
                clocks.exact(c.due()),
                time(c.neededBy()),
                c.act().map(a -> a.act().code()).orElse(""),
                time(c.act().map(PolicyAct::when)),
                "");
    }

    private void act(CSVPrinter csv, Act a) throws IOException {
        csv.printRecord(
                "by-itself",
                a.act().submission(),
                a.test().orElse(""),
                "",
                String.join(" ", a.act().codes()),
                "",
                "",
                "",
                "",
                a.act().act().code(),
                clocks.exact(a.act().when()),
                a.letter().code());
    }

    private String time(Optional<Instant> t) {
        return t.map(clocks::exact).orElse("");
    }
}

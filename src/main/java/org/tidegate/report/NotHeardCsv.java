package org.tidegate.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tidegate.casework.SilentTest;
import org.tidegate.examination.timing.TestWindows;
import org.tidegate.rules.Rules;
import org.tidegate.work.SubmissionId;

/** Tests of which nothing came as CSV (RFC 4180), a row a test, without a name; times as RFC 3339 with offset. */
public final class NotHeardCsv {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader(
                    "ref",
                    "attempt",
                    "clinic",
                    "step",
                    "timed",
                    "photograph_from",
                    "photograph_until",
                    "send_by",
                    "perhaps",
                    "reminder")
            .get();

    private final Clocks clocks;

    public NotHeardCsv(Rules rules) {
        this.clocks = new Clocks(rules.timing().zone());
    }

    public String write(List<SilentTest> all) {
        StringBuilder out = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(out, FORMAT)) {
            for (SilentTest s : all) {
                row(csv, s);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private void row(CSVPrinter csv, SilentTest s) throws IOException {
        TestWindows w = s.windows();
        csv.printRecord(
                s.test().key().ref(),
                s.test().key().attempt(),
                s.test().appointment().clinic(),
                s.step().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                w.timed() ? "yes" : "no",
                clocks.exact(w.earliest().from()),
                clocks.exact(w.latest().until()),
                clocks.exact(w.latest().sendBy()),
                s.perhaps().stream().map(SubmissionId::toString).collect(Collectors.joining(" ")),
                s.reminder().map(l -> l.state().code()).orElse(""));
    }
}

package org.tidegate.message;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The header of a message or part, however malformed (RFC 5322 §2.2, obsolete forms of §4.5 included).
 *
 * @param fields in order
 * @param body what follows the header
 */
record HeaderSection(List<Field> fields, Slice body) {

    Optional<String> first(String name) {
        return all(name).stream().findFirst().map(Field::value);
    }

    List<Field> all(String name) {
        return fields.stream().filter(f -> f.name().equals(name)).toList();
    }

    static HeaderSection read(Slice entity, String place, Limits limits, List<Problem> problems) {
        return new Reader(entity, place, limits, problems).read();
    }

    private static final class Reader {
        private final Slice entity;
        private final String place;
        private final Limits limits;
        private final List<Problem> problems;
        private final List<Field> fields = new ArrayList<>();
        private boolean bad;
        private boolean over;

        Reader(Slice entity, String place, Limits limits, List<Problem> problems) {
            this.entity = entity;
            this.place = place;
            this.limits = limits;
            this.problems = problems;
        }

        HeaderSection read() {
            int at = skipEnvelopeLine(entity.from());
            int body = entity.to();
            while (at < entity.to()) {
                int next = fieldEnd(at);
                int end = entity.lineEnd(at, entity.nextLine(at));
                if (end == at) {
                    body = entity.nextLine(at);
                    break;
                }
                if (!take(at, next)) {
                    body = at;
                    break;
                }
                at = next;
            }
            report();
            return new HeaderSection(List.copyOf(fields), entity.between(body, entity.to()));
        }

        /** An mbox {@code From } line is no header field; some exports leave it in. */
        private int skipEnvelopeLine(int at) {
            byte[] start = Arrays.copyOfRange(entity.bytes(), at, Math.min(at + 6, entity.to()));
            String text = Charsets.unlabelled(start);
            return text.startsWith("From ") || text.startsWith(">From ") ? entity.nextLine(at) : at;
        }

        /** Index after the field's last folded line. */
        private int fieldEnd(int at) {
            int next = entity.nextLine(at);
            while (next < entity.to() && isFold(next)) {
                next = entity.nextLine(next);
            }
            return next;
        }

        private boolean isFold(int at) {
            return (entity.at(at) == ' ' || entity.at(at) == '\t');
        }

        /** Takes one field; false where the line belongs to the body already. */
        private boolean take(int at, int next) {
            if (next - entity.from() > limits.headerBytes() || fields.size() >= limits.headerFields()) {
                over = true;
                return true;
            }
            int colon = colon(at, entity.lineEnd(at, entity.nextLine(at)));
            if (colon < 0) {
                bad = true;
                return !fields.isEmpty() && !startsLikeBoundary(at);
            }
            String name = Charsets.unlabelled(Arrays.copyOfRange(entity.bytes(), at, colon))
                    .strip();
            String value = Charsets.unlabelled(Arrays.copyOfRange(entity.bytes(), colon + 1, next));
            fields.add(new Field(fields.size(), name, unfold(value)));
            return true;
        }

        private boolean startsLikeBoundary(int at) {
            return at + 1 < entity.to() && entity.at(at) == '-' && entity.at(at + 1) == '-';
        }

        /** Index of the colon that ends a field name; -1 where the line is no field. White space before it is obsolete but read. */
        private int colon(int at, int end) {
            int i = at;
            while (i < end && entity.at(i) > 32 && entity.at(i) < 127 && entity.at(i) != ':') {
                i++;
            }
            int nameEnd = i;
            while (i < end && (entity.at(i) == ' ' || entity.at(i) == '\t')) {
                i++;
            }
            return nameEnd > at && i < end && entity.at(i) == ':' ? i : -1;
        }

        /** RFC 5322 §2.2.3: a line break before white space goes, any other break or NUL stands for a space. */
        private static String unfold(String value) {
            StringBuilder out = new StringBuilder(value.length());
            for (int i = 0; i < value.length(); i++) {
                char c = value.charAt(i);
                boolean lineBreak = c == '\r' || c == '\n';
                boolean folded = lineBreak && i + 1 < value.length() && " \t\r\n".indexOf(value.charAt(i + 1)) >= 0;
                if (!folded) {
                    out.append(lineBreak || c == 0 ? ' ' : c);
                }
            }
            return out.toString().strip();
        }

        private void report() {
            if (bad) {
                problems.add(new Problem(
                        Problem.Kind.MALFORMED, place, "The header holds lines that are no header fields."));
            }
            if (over) {
                problems.add(new Problem(
                        Problem.Kind.OVER_LIMIT,
                        place,
                        "The header is longer than " + limits.headerBytes() + " bytes or " + limits.headerFields()
                                + " fields; the rest of it was not read."));
            }
        }
    }
}

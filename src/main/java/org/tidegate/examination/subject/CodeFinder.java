package org.tidegate.examination.subject;

import org.tidegate.rules.WordKind;

/** Numbers and codes that are no time: appointment references, marks, birth dates, lots, phones, "3 of 3". */
final class CodeFinder implements Finder {

    private static final int MARK_LENGTH = 4;
    private static final int LONGEST_CODE = 12;

    @Override
    public void find(Line line, int at, Candidates out) {
        code(line, at, out);
        if (line.isNumber(at)) {
            counted(line, at, out);
            measured(line, at, out);
            phone(line, at, out);
        }
        if (line.isSign(at, "+") && line.isNumber(at + 1)) {
            phone(line, at, out);
        }
        boolean label = line.is(at, WordKind.LABEL) || line.is(at, WordKind.REFERENCE_LABEL);
        if (label && line.token(at).text().length() > 1) {
            labelled(line, at, out);
        }
    }

    /** A glued run of letters, digits and hyphens that holds both letters and digits. */
    private static void code(Line line, int at, Candidates out) {
        if (line.glued(at) && (line.isWord(at - 1) || line.isNumber(at - 1))) {
            return;
        }
        int end = at;
        int letters = 0;
        int digits = 0;
        boolean hyphen = false;
        while (end < line.size() && end - at < LONGEST_CODE && (end == at || line.glued(end))) {
            if (line.isWord(end)) {
                letters += line.token(end).text().length();
            } else if (line.isNumber(end)) {
                digits += line.token(end).digits();
            } else if (line.isSign(end, "-") && end > at && !hyphen) {
                hyphen = true;
            } else {
                break;
            }
            end++;
        }
        if (letters == 0 || digits == 0) {
            return;
        }
        int parts = end - at;
        if (line.isWord(at) && !line.meaning(at).calendar() && letters <= 3 && digits >= 4) {
            boolean sure = hyphen && parts == 3 || line.after(at, WordKind.REFERENCE_LABEL);
            add(Candidate.Field.REFERENCE, line, at, end, sure ? -0.3 : 0.8, out);
        }
        if (letters + digits == MARK_LENGTH && !hyphen) {
            boolean told = line.after(at, WordKind.MARK_LABEL);
            add(Candidate.Field.MARK, line, at, end, told ? -0.3 : 1, out);
        }
        boolean calendar =
                line.meaning(at).calendar() || line.meaning(at + 1).calendar() || line.is(at + 1, WordKind.HOUR_UNIT);
        out.add(Candidate.skip(at, end, calendar || letters > 3 && !hyphen && parts < 3 ? 1.5 : 0.3));
    }

    private static void add(Candidate.Field field, Line line, int at, int end, double cost, Candidates out) {
        out.add(new Candidate(field, at, end, cost, new Candidate.Words(line.text(at, end))));
    }

    /** 3 of 3, 2/2 behind a label, 1st attempt. */
    private static void counted(Line line, int at, Candidates out) {
        if (line.glued(at + 1) && line.is(at + 1, WordKind.ORDINAL) && line.is(at + 2, WordKind.LABEL)) {
            out.add(Candidate.skip(at, at + 3, -0.1));
        }
        boolean of = line.is(at + 1, WordKind.OF) || line.isSign(at + 1, "/");
        if (of
                && line.isNumber(at + 2)
                && line.token(at).number() <= line.token(at + 2).number()
                && line.token(at + 2).number() < 10) {
            out.add(Candidate.skip(at, at + 3, line.after(at, WordKind.LABEL) ? 0 : 0.9));
        }
    }

    /** 36.6, 36,6 °C. */
    private static void measured(Line line, int at, Candidates out) {
        boolean decimal =
                line.isSign(at + 1, ".,") && line.glued(at + 1) && line.isNumber(at + 2) && line.glued(at + 2);
        if (decimal && line.token(at).number() >= 34 && line.token(at).number() <= 42) {
            int end = line.isSign(at + 3, "°") ? at + 4 : at + 3;
            out.add(Candidate.skip(at, line.isWord(end) && line.token(end).key().equals("c") ? end + 1 : end, 0));
        }
    }

    /** Digit groups of nine and more digits in all, or five and more in one. */
    private static void phone(Line line, int at, Candidates out) {
        int digits = 0;
        int end = at;
        while (end < line.size() && (line.isNumber(end) || line.isSign(end, "+()-") && line.isNumber(end + 1))) {
            digits += line.token(end).digits();
            end++;
            if (digits >= 9) {
                out.add(Candidate.skip(at, end, 0.2));
            }
        }
    }

    /** A label with the number or code that it announces. */
    private static void labelled(Line line, int at, Candidates out) {
        if (line.glued(at) && line.isSign(at - 1, "-")) {
            return;
        }
        int i = at + Math.max(line.length(at, WordKind.LABEL), line.length(at, WordKind.REFERENCE_LABEL));
        while (line.isSign(i, ".:#=º°") || line.isSign(i, "-") && line.glued(i) || line.is(i, WordKind.LABEL)) {
            i++;
        }
        boolean weak = line.is(at, WordKind.FILLER);
        if (line.isNumber(i) && !(weak && line.looksLikeTime(i))) {
            boolean decimal =
                    line.isSign(i + 1, ".,/-") && line.glued(i + 1) && line.isNumber(i + 2) && line.glued(i + 2);
            int end = decimal ? i + 3 : i + 1;
            end = line.isWord(end) && line.glued(end) && line.token(end).text().length() == 1 ? end + 1 : end;
            out.add(Candidate.skip(at, end, NamePart.behindName(line, at) ? 0.6 : -0.1));
        }
    }
}

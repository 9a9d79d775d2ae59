package org.tidegate.examination.subject;

import org.tidegate.rules.WordKind;

/** Names: runs of words with initials, particles, hyphens and suffixes; "Surname, Given"; titles left out. */
final class NameFinder {

    private static final int MOST_WORDS = 7;
    private static final int MOST_TOKENS = 14;

    private final Sender sender;

    NameFinder(Sender sender) {
        this.sender = sender;
    }

    void find(Line line, int at, Candidates out) {
        if (!starts(line, at)) {
            return;
        }
        NameRun run = new NameRun(line, sender, out, at);
        int i = at;
        while (i < line.size() && i - at < MOST_TOKENS && run.words() < MOST_WORDS) {
            int next = step(line, i, run);
            if (next < 0) {
                return;
            }
            i = next;
            if (run.atWordEnd()) {
                out.add(new Candidate(Candidate.Field.NAME, at, i, run.cost(), new Candidate.Words(run.text())));
            }
        }
    }

    private boolean starts(Line line, int at) {
        return line.isWord(at)
                && !(line.is(at, WordKind.PREFIX) && line.isSign(at + 1, ":["))
                && (!line.is(at, WordKind.TITLE) || initial(line, at))
                && !line.is(at, WordKind.SUFFIX)
                && !(line.glued(at)
                        && line.isNumber(at - 1)
                        && !Tokenizer.unspaced(line.token(at).text().codePointAt(0)));
    }

    /** P. Wardle, though "p." is a title somewhere in lower case. */
    private boolean initial(Line line, int at) {
        Token t = line.token(at);
        boolean known = line.isWord(at + 1) && sender.names(line.token(at + 1).key()) && sender.bears(t.key());
        return t.text().length() == 1
                && (known || Character.isUpperCase(t.text().charAt(0)));
    }

    /** Takes the token into the run; the index behind it, -1 where a name cannot go on. */
    private static int step(Line line, int i, NameRun run) {
        if (line.isWord(i)) {
            if (line.is(i, WordKind.TITLE) && !line.is(i, WordKind.PARTICLE) && run.afterComma()) {
                return line.isSign(i + 1, ".") ? i + 2 : i + 1;
            }
            run.word(i);
            return i + 1;
        }
        if (line.isSign(i, "-'’") && line.glued(i) && line.isWord(i + 1) && line.glued(i + 1)) {
            run.join(line.token(i).text());
            return i + 1;
        }
        if (line.isSign(i, ".") && line.glued(i) && run.dotFits(i)) {
            run.dot();
            return i + 1;
        }
        if (line.isSign(i, ".") && line.glued(i) && line.isWord(i - 1) && line.isWord(i + 1) && line.glued(i + 1)) {
            run.join(" ");
            return i + 1;
        }
        if (line.isSign(i, "/") && line.glued(i) && line.isWord(i + 1) && line.glued(i + 1) && run.slash(i + 1)) {
            return i + 1;
        }
        if (line.isSign(i, ",") && line.isWord(i + 1) && run.comma(line.is(i + 1, WordKind.SUFFIX))) {
            return i + 1;
        }
        return -1;
    }
}

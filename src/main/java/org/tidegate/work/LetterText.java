package org.tidegate.work;

import java.util.List;
import java.util.Optional;

/**
 * A letter as it goes out; names people, so it is kept sealed.
 *
 * @param to one address
 * @param language BCP 47
 * @param subject never bears a name or a result
 * @param text plain text, paragraphs parted by empty lines
 * @param inReplyTo Message-ID of the message that it answers, without angle brackets
 * @param references the thread, oldest first, without angle brackets
 * @param enclosed a file that goes with it
 */
public record LetterText(
        String to,
        String language,
        String subject,
        String text,
        Optional<String> inReplyTo,
        List<String> references,
        Optional<Enclosed> enclosed) {

    public LetterText {
        references = List.copyOf(references);
    }

    /** One without a file. */
    public LetterText(
            String to,
            String language,
            String subject,
            String text,
            Optional<String> inReplyTo,
            List<String> references) {
        this(to, language, subject, text, inReplyTo, references, Optional.empty());
    }

    public LetterText with(Enclosed file) {
        return new LetterText(to, language, subject, text, inReplyTo, references, Optional.of(file));
    }
}

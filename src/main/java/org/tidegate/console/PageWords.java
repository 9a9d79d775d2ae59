package org.tidegate.console;

import java.time.ZoneId;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.tidegate.rules.Rules;

/** The words of the pages in every language. */
@Component
class PageWords {

    private final ZoneId zone;
    private final MessageSource messages;

    PageWords(Rules rules, MessageSource messages) {
        this.zone = rules.timing().zone();
        this.messages = messages;
    }

    Words in(Locale locale) {
        return new Words(zone, locale, messages);
    }
}

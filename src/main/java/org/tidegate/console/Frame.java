package org.tidegate.console;

import java.security.Principal;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What stands around every page. */
@ControllerAdvice
class Frame {

    private final Clock clock;
    private final PageWords words;

    Frame(Clock clock, PageWords words) {
        this.clock = clock;
        this.words = words;
    }

    /** Who is signed in; empty before that. */
    @ModelAttribute("who")
    String who(@Nullable Principal who) {
        return Optional.ofNullable(who).map(Principal::getName).orElse("");
    }

    @ModelAttribute("now")
    String now(Locale locale) {
        return words.in(locale).dateAndTime(clock.instant());
    }

    @ModelAttribute("language")
    String language(Locale locale) {
        return locale.getLanguage();
    }
}

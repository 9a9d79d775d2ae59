package org.tidegate.console;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.tidegate.rules.RoleRules.Permission;

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

    /** Where the person is, so that the way there is marked. */
    @ModelAttribute("here")
    String here(HttpServletRequest request) {
        return String.valueOf(request.getServletPath());
    }

    /** What the person may do; empty for one who is not signed in. */
    @ModelAttribute("mayTriage")
    boolean mayTriage(@Nullable Authentication who) {
        return may(who, Permission.TRIAGE);
    }

    @ModelAttribute("mayForget")
    boolean mayForget(@Nullable Authentication who) {
        return may(who, Permission.FORGET);
    }

    private static boolean may(@Nullable Authentication who, Permission what) {
        return who != null
                && who.getAuthorities().stream()
                        .anyMatch(a -> Route.authority(what).equals(a.getAuthority()));
    }

    @ModelAttribute("language")
    String language(Locale locale) {
        return locale.getLanguage();
    }
}

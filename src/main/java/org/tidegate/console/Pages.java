package org.tidegate.console;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.tidegate.casework.Casebook;
import org.tidegate.casework.SubmissionView;
import org.tidegate.work.SubmissionId;

/** The pages: sign-in, queue, submission. */
@Controller
class Pages {

    private static final List<String> SHOWN_TYPES = List.of("image/jpeg", "image/png", "image/gif", "image/webp");

    private final Casebook casebook;
    private final Clock clock;
    private final PageWords pageWords;

    Pages(Casebook casebook, PageWords pageWords, Clock clock) {
        this.casebook = casebook;
        this.clock = clock;
        this.pageWords = pageWords;
    }

    @GetMapping("/sign-in")
    String signIn() {
        return "sign-in";
    }

    @GetMapping("/")
    String start() {
        return "redirect:/queue";
    }

    @GetMapping("/submissions/{id}")
    String submission(@PathVariable long id, Locale locale, Model model) {
        Instant now = clock.instant();
        SubmissionView view = casebook.submission(new SubmissionId(id), now).orElseThrow(Pages::unknown);
        model.addAttribute("page", SubmissionPage.of(view, now, pageWords.in(locale)));
        return "submission";
    }

    /** A picture as it came; formats that a browser does not show, and anything that is no picture, are not served. */
    @GetMapping("/submissions/{id}/messages/{message}/picture")
    ResponseEntity<byte[]> picture(@PathVariable long id, @PathVariable int message, @RequestParam String path) {
        return casebook.picture(new SubmissionId(id), message, path)
                .filter(p -> SHOWN_TYPES.contains(p.mediaType()))
                .map(p -> ResponseEntity.ok()
                        .contentType(MediaType.parseMediaType(p.mediaType()))
                        .cacheControl(CacheControl.maxAge(0, TimeUnit.SECONDS)
                                .cachePrivate()
                                .noTransform())
                        .header("X-Content-Type-Options", "nosniff")
                        .body(p.content()))
                .orElseThrow(Pages::unknown);
    }

    private static ResponseStatusException unknown() {
        return new ResponseStatusException(HttpStatus.NOT_FOUND, "There is no such submission.");
    }
}

package org.tidegate.console;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.tidegate.casework.Casebook;

/** The queue. */
@Controller
class QueueController {

    private final Casebook casebook;
    private final Clock clock;
    private final PageWords pageWords;

    QueueController(Casebook casebook, Clock clock, PageWords pageWords) {
        this.casebook = casebook;
        this.clock = clock;
        this.pageWords = pageWords;
    }

    @GetMapping("/queue")
    String queue(
            @RequestParam(defaultValue = "") String lane,
            @RequestParam(defaultValue = "") String kind,
            @RequestParam(defaultValue = "") String words,
            @RequestParam(defaultValue = "1") String page,
            Locale locale,
            Model model) {
        Instant now = clock.instant();
        QueueQuery query = QueueQuery.of(lane, kind, words, page);
        model.addAttribute("page", QueuePage.of(casebook.queue(now), query, now, pageWords.in(locale)));
        return "queue";
    }

    /** @param since milliseconds since 1970 as the page bears them */
    @GetMapping("/queue/news")
    String news(
            @RequestParam(defaultValue = "") String lane,
            @RequestParam(defaultValue = "") String kind,
            @RequestParam(defaultValue = "") String words,
            @RequestParam long since,
            @RequestParam(defaultValue = "") List<Long> shown,
            Locale locale,
            Model model) {
        Instant now = clock.instant();
        QueueQuery query = QueueQuery.of(lane, kind, words, "1");
        Words said = pageWords.in(locale);
        model.addAttribute(
                "news", QueueNews.of(casebook.queue(now), query, Instant.ofEpochMilli(since), shown, now, said));
        return "news";
    }
}

package org.tidegate.console;

import java.security.Principal;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.tidegate.casework.ActionResult;
import org.tidegate.casework.Explaining;
import org.tidegate.casework.Replying;
import org.tidegate.casework.Replying.Edited;
import org.tidegate.casework.Replying.Then;
import org.tidegate.casework.Ticket;
import org.tidegate.mailbox.LetterHtml;
import org.tidegate.work.SubmissionId;

/** Answering: the reply as suggested or edited, sent at once or looked at first. */
@Controller
class ReplyController {

    private static final int LONGEST = 20_000;

    private final Replying replying;
    private final Explaining explaining;
    private final Person person;
    private final PageWords pageWords;

    ReplyController(Replying replying, Explaining explaining, Person person, PageWords pageWords) {
        this.replying = replying;
        this.explaining = explaining;
        this.person = person;
        this.pageWords = pageWords;
    }

    /** The form of a reply as it comes back. */
    record Form(int version, String to, String language, String text, String notAfter, String then) {

        Edited edited() {
            try {
                return new Edited(
                        to,
                        language,
                        text.substring(0, Math.min(LONGEST, text.length())).replace("\r\n", "\n"),
                        notAfter.isEmpty() ? Optional.empty() : Optional.of(Instant.parse(notAfter)),
                        Then.valueOf(then));
            } catch (DateTimeParseException | IllegalArgumentException e) {
                throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "This is no form of ours.", e);
            }
        }
    }

    @PostMapping("/submissions/{id}/reply")
    String send(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam(defaultValue = "") String to,
            @RequestParam String language,
            @RequestParam String text,
            @RequestParam(defaultValue = "") String notAfter,
            @RequestParam String then,
            Principal who,
            Locale locale,
            Model model,
            RedirectAttributes flash) {
        Form form = new Form(version, to, language, text, notAfter, then);
        SubmissionId submission = new SubmissionId(id);
        ActionResult result = replying.send(person.of(who), new Ticket(submission, version), form.edited());
        if (result instanceof ActionResult.Refused refused && refused.code().equals("text")) {
            return shown(submission, form, List.of(refused.words()), locale, model);
        }
        return Outcome.then(result, submission, flash);
    }

    /** The page on the times goes to the participant. */
    @PostMapping("/submissions/{id}/times")
    String times(@PathVariable long id, @RequestParam int version, Principal who, RedirectAttributes flash) {
        Ticket ticket = new Ticket(new SubmissionId(id), version);
        return Outcome.then(explaining.send(person.of(who), ticket), ticket.id(), flash);
    }

    /** The letter exactly as it would go out, and what is wrong with it. */
    @PostMapping("/submissions/{id}/reply/preview")
    String preview(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam(defaultValue = "") String to,
            @RequestParam String language,
            @RequestParam String text,
            @RequestParam(defaultValue = "") String notAfter,
            @RequestParam String then,
            Locale locale,
            Model model) {
        Form form = new Form(version, to, language, text, notAfter, then);
        SubmissionId submission = new SubmissionId(id);
        return shown(submission, form, replying.problems(submission, form.edited()), locale, model);
    }

    private String shown(SubmissionId id, Form form, List<String> problems, Locale locale, Model model) {
        String subject = replying.draft(id, Optional.of(form.language()))
                .map(Replying.Draft::subject)
                .orElse("");
        model.addAttribute("number", id.toString());
        model.addAttribute("id", id.value());
        model.addAttribute("form", form);
        model.addAttribute("subject", subject);
        model.addAttribute("text", form.edited().text());
        model.addAttribute(
                "html", LetterHtml.of(form.language(), subject, form.edited().text()));
        model.addAttribute("problems", problems);
        model.addAttribute(
                "notAfter",
                form.edited().notAfter().map(pageWords.in(locale)::clock).orElse(""));
        return "preview";
    }
}

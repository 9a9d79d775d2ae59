package org.tidegate.console;

import java.security.Principal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.ActionResult;
import org.tidegate.casework.Splitting;
import org.tidegate.casework.Splitting.Pick;
import org.tidegate.casework.Splitting.Place;
import org.tidegate.casework.Splitting.Why;
import org.tidegate.casework.Ticket;
import org.tidegate.work.SubmissionId;

/** Splitting one message among several tests. */
@Controller
class SplitController {

    /** How the form names where a picture goes: the message's place, then the picture's path. */
    static final String FIELD = "place ";

    private static final Pattern NAME = Pattern.compile(FIELD + "([0-9]{1,4})/(.{1,400})");

    private final Splitting splitting;
    private final Person person;

    SplitController(Splitting splitting, Person person) {
        this.splitting = splitting;
        this.person = person;
    }

    /** @param form one field a picture beside the others, so that it works with any number of them and without script */
    @PostMapping("/submissions/{id}/split")
    String split(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam String test,
            @RequestParam String why,
            @RequestParam Map<String, String> form,
            Principal who,
            RedirectAttributes flash) {
        Ticket ticket = new Ticket(new SubmissionId(id), version);
        TestKey other = TestKey.parse(test).orElseThrow(() -> bad("That is no reference of a test."));
        ActionResult result = splitting.split(person.of(who), ticket, other, places(form), why(why));
        return Outcome.then(result, ticket.id(), flash);
    }

    private static Map<Pick, Place> places(Map<String, String> form) {
        Map<Pick, Place> places = new HashMap<>();
        form.forEach((name, value) -> {
            Matcher field = NAME.matcher(name);
            if (field.matches()) {
                places.put(new Pick(Integer.parseInt(field.group(1)), field.group(2)), place(value));
            }
        });
        return places;
    }

    private static Place place(String value) {
        return Arrays.stream(Place.values())
                .filter(p -> p.name().equals(value))
                .findFirst()
                .orElseThrow(() -> bad("A picture goes here, there, or to both."));
    }

    private static Why why(String code) {
        return Arrays.stream(Why.values())
                .filter(w -> w.code().equals(code))
                .findFirst()
                .orElseThrow(() -> bad("No such reason."));
    }

    private static ResponseStatusException bad(String words) {
        return new ResponseStatusException(HttpStatus.BAD_REQUEST, words);
    }
}

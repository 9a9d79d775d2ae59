package org.tidegate.console;

import java.security.Principal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** Where a person comes in, and where one's work begins. */
@Controller
class StartController {

    private final Person person;

    StartController(Person person) {
        this.person = person;
    }

    @GetMapping("/sign-in")
    String signIn() {
        return "sign-in";
    }

    @GetMapping("/")
    String start(Principal who) {
        return person.may(who).triage() ? "redirect:/queue" : "redirect:/find";
    }
}

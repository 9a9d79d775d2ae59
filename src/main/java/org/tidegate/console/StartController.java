package org.tidegate.console;

import java.security.Principal;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** Where a person comes in, and where one's work begins. */
@Controller
class StartController {

    private final Person person;
    private final boolean openId;

    StartController(Person person, ObjectProvider<OpenId> provider) {
        this.person = person;
        this.openId = provider.getIfAvailable() != null;
    }

    @GetMapping("/sign-in")
    String signIn(Model model) {
        if (openId) {
            model.addAttribute("provider", OpenIdSignIn.BUTTON);
        }
        return "sign-in";
    }

    @GetMapping("/")
    String start(Principal who) {
        return person.may(who).triage() ? "redirect:/queue" : "redirect:/find";
    }
}

package org.tidegate.console;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.web.filter.OncePerRequestFilter;
import org.tidegate.casework.SignIns;
import org.tidegate.work.UserId;

/** Lets a name, and an address, wait longer after each failure, and has every sign-in recorded. */
class SignInGuard extends OncePerRequestFilter {

    private static final int LONGEST_NAME = 100;

    private final SignIns people;
    private final Attempts attempts;

    SignInGuard(SignIns people, Clock clock) {
        this.people = people;
        this.attempts = new Attempts(clock);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        boolean attempt =
                request.getMethod().equals("POST") && request.getServletPath().equals("/sign-in");
        if (attempt && attempts.mustWait(name(request), address(request))) {
            response.sendRedirect("/sign-in?error");
            return;
        }
        chain.doFilter(request, response);
    }

    void succeeded(HttpServletRequest request, HttpServletResponse response, Authentication who) throws IOException {
        attempts.succeeded(name(request));
        people.succeeded(new UserId(who.getName()), "password");
        response.sendRedirect("/");
    }

    void failed(HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
            throws IOException {
        attempts.failed(name(request), address(request));
        people.failed(new UserId(name(request)), "password");
        response.sendRedirect("/sign-in?error");
    }

    void left(@Nullable Authentication who) {
        Optional.ofNullable(who).ifPresent(w -> people.left(new UserId(w.getName())));
    }

    private static String name(HttpServletRequest request) {
        String name = Optional.ofNullable(request.getParameter("username")).orElse("");
        return name.substring(0, Math.min(LONGEST_NAME, name.length())).strip().toLowerCase(Locale.ROOT);
    }

    private static String address(HttpServletRequest request) {
        return String.valueOf(request.getRemoteAddr());
    }
}

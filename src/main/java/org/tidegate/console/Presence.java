package org.tidegate.console;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.tidegate.rules.RoleRules.Permission;

/** Who of those that may triage has had a page open of late: an open queue asks for news by itself. */
@Component
class Presence extends OncePerRequestFilter {

    private static final Duration PRESENT = Duration.ofMinutes(5);

    private final Clock clock;
    private final Map<String, Instant> seen = new ConcurrentHashMap<>();

    Presence(Clock clock) {
        this.clock = clock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        chain.doFilter(request, response);
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        if (who != null && !(who instanceof AnonymousAuthenticationToken) && mayTriage(who)) {
            seen.put(who.getName(), clock.instant());
        }
    }

    private static boolean mayTriage(Authentication who) {
        return who.getAuthorities().stream()
                .anyMatch(a -> Route.authority(Permission.TRIAGE).equals(a.getAuthority()));
    }

    void left(@Nullable Authentication who) {
        Optional.ofNullable(who).ifPresent(w -> seen.remove(w.getName()));
    }

    /** How many people are there. */
    int people() {
        Instant since = clock.instant().minus(PRESENT);
        seen.values().removeIf(t -> t.isBefore(since));
        return seen.size();
    }
}

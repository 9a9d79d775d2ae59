package org.tidegate.console;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.authentication.logout.SecurityContextLogoutHandler;
import org.springframework.web.filter.OncePerRequestFilter;
import org.tidegate.casework.Rights;
import org.tidegate.casework.SignIns;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** Ends the session of a person who has departed or whose roles have changed: at once, not when it runs out. */
class StillActive extends OncePerRequestFilter {

    private final SignIns people;
    private final Rights rights;

    StillActive(SignIns people, Rights rights) {
        this.people = people;
        this.rights = rights;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        if (who != null && !(who instanceof AnonymousAuthenticationToken) && !stands(who)) {
            new SecurityContextLogoutHandler().logout(request, response, who);
        }
        chain.doFilter(request, response);
    }

    private boolean stands(Authentication who) {
        Collection<? extends GrantedAuthority> held = who.getAuthorities();
        List<String> now = people.user(new UserId(who.getName()))
                .filter(User::active)
                .map(u -> Security.authorities(u, rights).stream()
                        .map(GrantedAuthority::getAuthority)
                        .map(String::valueOf)
                        .toList())
                .orElse(List.of());
        List<String> then = held.stream()
                .map(GrantedAuthority::getAuthority)
                .map(String::valueOf)
                .filter(a -> a.startsWith("MAY_"))
                .toList();
        return !now.isEmpty() && new HashSet<>(now).equals(new HashSet<>(then));
    }
}

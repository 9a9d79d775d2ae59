package org.tidegate.console;

import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.tidegate.casework.Rights;
import org.tidegate.casework.SignIns;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.work.UserId;

/** Who may come in, where to, and what a browser may do with what it gets. */
@Configuration
class Security {

    /** No script but our own files, no frame, nothing from elsewhere. */
    private static final String POLICY =
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self';"
                    + " connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'";

    @Bean
    SecurityFilterChain chain(
            HttpSecurity http,
            SignIns people,
            Rights rights,
            Clock clock,
            Presence presence,
            ObjectProvider<OpenId> provider) {
        SignInGuard guard = new SignInGuard(people, clock);
        provider.ifAvailable(p -> new OpenIdSignIn(p, people, rights).allow(http));
        return http.authorizeHttpRequests(Security::routes)
                .formLogin(f -> f.loginPage("/sign-in")
                        .successHandler(guard::succeeded)
                        .failureHandler(guard::failed)
                        .permitAll())
                .logout(l -> l.logoutUrl("/sign-out")
                        .addLogoutHandler((request, response, who) -> guard.left(who))
                        .addLogoutHandler((request, response, who) -> presence.left(who))
                        .logoutSuccessUrl("/sign-in?out"))
                .addFilterBefore(guard, UsernamePasswordAuthenticationFilter.class)
                .addFilterAfter(new StillActive(people, rights), UsernamePasswordAuthenticationFilter.class)
                .addFilterAfter(presence, StillActive.class)
                .headers(h -> h.contentSecurityPolicy(c -> c.policyDirectives(POLICY))
                        .referrerPolicy(r -> r.policy(ReferrerPolicy.NO_REFERRER)))
                .build();
    }

    private static void routes(
            AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry registry) {
        registry.requestMatchers("/static/**", "/sign-in", "/error").permitAll();
        registry.requestMatchers("/").authenticated();
        for (Route route : Route.ALL) {
            registry.requestMatchers(route.method(), route.path()).hasAnyAuthority(route.authorities());
        }
        registry.anyRequest().denyAll();
    }

    @Bean
    PasswordEncoder passwords() {
        return Passwords.encoder();
    }

    @Bean
    UserDetailsService people(SignIns people, Rights rights) {
        return name -> people.user(new UserId(name))
                .filter(org.tidegate.work.User::active)
                .map(u -> User.withUsername(u.id().value())
                        .password(u.passwordHash())
                        .authorities(authorities(u, rights))
                        .build())
                .orElseThrow(() -> new UsernameNotFoundException("no such user"));
    }

    static List<SimpleGrantedAuthority> authorities(org.tidegate.work.User user, Rights rights) {
        return Arrays.stream(Permission.values())
                .filter(p -> rights.may(user, p))
                .map(p -> new SimpleGrantedAuthority(Route.authority(p)))
                .toList();
    }
}

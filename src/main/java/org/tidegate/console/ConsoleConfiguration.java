package org.tidegate.console;

import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.tidegate.casework.Casebook;
import org.tidegate.work.Role;
import org.tidegate.work.UserId;

/** Wiring of the web pages: who may come in, and what a browser may do with them. */
@SpringBootConfiguration
@EnableAutoConfiguration
@ComponentScan("org.tidegate.console")
class ConsoleConfiguration {

    /** No script but our own files, no frame, nothing from elsewhere. */
    private static final String POLICY =
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self';"
                    + " connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'";

    @Bean
    SecurityFilterChain security(HttpSecurity http) {
        return http.authorizeHttpRequests(r -> r.requestMatchers("/static/**", "/sign-in")
                        .permitAll()
                        .anyRequest()
                        .hasAnyRole(OPERATOR_VIEW))
                .formLogin(f ->
                        f.loginPage("/sign-in").defaultSuccessUrl("/", true).permitAll())
                .logout(l -> l.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in?out"))
                .headers(h -> h.contentSecurityPolicy(c -> c.policyDirectives(POLICY))
                        .referrerPolicy(r -> r.policy(ReferrerPolicy.NO_REFERRER)))
                .build();
    }

    private static final String[] OPERATOR_VIEW =
            java.util.Arrays.stream(Role.values()).map(Enum::name).toArray(String[]::new);

    @Bean
    PasswordEncoder passwords() {
        return Passwords.encoder();
    }

    @Bean
    UserDetailsService people(Casebook casebook) {
        return name -> casebook.user(new UserId(name))
                .filter(org.tidegate.work.User::active)
                .map(u -> User.withUsername(u.id().value())
                        .password(u.passwordHash())
                        .roles(u.roles().stream().map(Enum::name).sorted().toArray(String[]::new))
                        .build())
                .orElseThrow(() -> new UsernameNotFoundException("no such user"));
    }
}

package org.tidegate.console;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.oauth2.client.oidc.userinfo.OidcUserRequest;
import org.springframework.security.oauth2.client.oidc.userinfo.OidcUserService;
import org.springframework.security.oauth2.client.registration.ClientRegistration;
import org.springframework.security.oauth2.client.registration.ClientRegistrations;
import org.springframework.security.oauth2.client.registration.InMemoryClientRegistrationRepository;
import org.springframework.security.oauth2.client.registration.SupplierClientRegistrationRepository;
import org.springframework.security.oauth2.core.OAuth2AuthenticationException;
import org.springframework.security.oauth2.core.OAuth2Error;
import org.springframework.security.oauth2.core.oidc.user.DefaultOidcUser;
import org.springframework.security.oauth2.core.oidc.user.OidcUser;
import org.tidegate.casework.Rights;
import org.tidegate.casework.SignIns;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** Lets in who the provider vouches for and who is somebody here: roles are given here, never by the provider. */
final class OpenIdSignIn {

    private static final String NAME = "openid";

    /** Followed by the name of the registration. */
    private static final String START = "/sign-in/with";

    static final String BUTTON = START + "/" + NAME;
    static final String CALLBACK = "/sign-in/from/" + NAME;

    private final OpenId provider;
    private final SignIns people;
    private final Rights rights;
    private final OidcUserService service = new OidcUserService();

    OpenIdSignIn(OpenId provider, SignIns people, Rights rights) {
        this.provider = provider;
        this.people = people;
        this.rights = rights;
    }

    void allow(HttpSecurity http) {
        // The provider is asked at the first sign-in, not at the start: passwords work while it is away.
        var lazily = new SupplierClientRegistrationRepository(
                () -> new InMemoryClientRegistrationRepository(registration()));
        http.oauth2Login(o -> o.loginPage("/sign-in")
                .clientRegistrationRepository(lazily)
                .authorizationEndpoint(a -> a.baseUri(START))
                .redirectionEndpoint(r -> r.baseUri(CALLBACK))
                .userInfoEndpoint(u -> u.oidcUserService(this::person))
                .successHandler(this::succeeded)
                .failureHandler(this::failed));
    }

    private ClientRegistration registration() {
        return ClientRegistrations.fromOidcIssuerLocation(provider.issuer().toString())
                .registrationId(NAME)
                .clientId(provider.clientId())
                .clientSecret(provider.secret().get())
                .scope("openid", "profile")
                .redirectUri(provider.callback())
                .build();
    }

    private OidcUser person(OidcUserRequest request) {
        OidcUser there = service.loadUser(request);
        User here = Optional.ofNullable(there.getClaimAsString(provider.claim()))
                .flatMap(name -> people.user(new UserId(name)))
                .filter(User::active)
                .orElseThrow(() -> new OAuth2AuthenticationException(
                        new OAuth2Error("nobody_here"), "the provider vouches for somebody who is nobody here"));
        return new DefaultOidcUser(
                Security.authorities(here, rights), there.getIdToken(), there.getUserInfo(), provider.claim());
    }

    private void succeeded(HttpServletRequest request, HttpServletResponse response, Authentication who)
            throws IOException {
        people.succeeded(new UserId(who.getName()), NAME);
        response.sendRedirect("/");
    }

    private void failed(HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
            throws IOException {
        people.failedNameless(NAME);
        response.sendRedirect("/sign-in?stranger");
    }
}

package org.tidegate.console;

import java.net.URI;
import java.util.function.Supplier;

/**
 * The provider at which people may sign in as well (OpenID Connect Core 1.0, authorization code flow).
 *
 * @param issuer as in its discovery document
 * @param secret of this client, read anew each time the provider is looked up
 * @param claim of the ID token that is a person's sign-in name here; the provider must keep it unique and never give it again
 * @param publicAddress of these pages, as browsers and the provider see them
 */
public record OpenId(URI issuer, String clientId, Supplier<String> secret, String claim, URI publicAddress) {

    /** Where the provider sends people back to; registered there. */
    public String callback() {
        return publicAddress.toString().replaceAll("/+$", "") + OpenIdSignIn.CALLBACK;
    }
}

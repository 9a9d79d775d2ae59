package org.tidegate.mailbox;

import java.util.function.Supplier;

/**
 * How to log in.
 *
 * @param user user name
 * @param secret the password, or a fresh OAuth 2.0 access token; asked before every connection
 * @param token whether the secret is an access token (SASL XOAUTH2)
 */
public record Login(String user, Supplier<String> secret, boolean token) {

    public static Login password(String user, String password) {
        return new Login(user, () -> password, false);
    }

    @Override
    public String toString() {
        return user;
    }
}

package org.tidegate.console;

import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

/** How passwords are kept: Argon2id (RFC 9106). */
public final class Passwords {

    /** What no password matches. */
    public static final String NONE = "";

    private Passwords() {}

    static PasswordEncoder encoder() {
        return Argon2PasswordEncoder.defaultsForSpringSecurity_v5_8();
    }

    /** The encoded form of a new password. */
    public static String encode(String password) {
        return String.valueOf(encoder().encode(password));
    }
}

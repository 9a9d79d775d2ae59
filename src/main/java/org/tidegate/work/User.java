package org.tidegate.work;

import java.util.Set;

/**
 * A person who signs in.
 *
 * @param passwordHash in the encoded form of the hash function; never the password
 * @param active a departed user stays for the history but cannot sign in
 */
public record User(UserId id, String displayName, Set<Role> roles, String passwordHash, boolean active) {

    public User {
        roles = Set.copyOf(roles);
    }
}

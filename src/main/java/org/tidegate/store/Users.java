package org.tidegate.store;

import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tidegate.work.Role;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** People who sign in. */
public final class Users {

    private static final String ALL = "SELECT id, display_name, roles, password_hash, active FROM users";

    private final Tx tx;

    Users(Tx tx) {
        this.tx = tx;
    }

    /** Adds the user, or replaces all but the identifier. */
    public void save(User u) {
        tx.update(
                "INSERT INTO users (id, display_name, roles, password_hash, active) VALUES (?, ?, ?, ?, ?)"
                        + " ON CONFLICT (id) DO UPDATE SET display_name = excluded.display_name, roles = excluded.roles,"
                        + " password_hash = excluded.password_hash, active = excluded.active",
                u.id().value(),
                u.displayName(),
                u.roles().stream().map(Role::name).sorted().collect(Collectors.joining(",")),
                u.passwordHash(),
                u.active());
    }

    public Optional<User> find(UserId id) {
        return tx.first(ALL + " WHERE id = ?", Users::read, id.value());
    }

    public List<User> all() {
        return tx.list(ALL + " ORDER BY id", Users::read);
    }

    private static User read(Row r) throws SQLException {
        return new User(
                new UserId(r.text("id")),
                r.text("display_name"),
                Arrays.stream(r.text("roles").split(","))
                        .filter(role -> !role.isEmpty())
                        .map(Role::valueOf)
                        .collect(Collectors.toSet()),
                r.text("password_hash"),
                r.flag("active"));
    }
}

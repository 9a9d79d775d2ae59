package org.tidegate.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidegate.casework.Desk;
import org.tidegate.console.Passwords;
import org.tidegate.work.Role;
import org.tidegate.work.User;
import org.tidegate.work.UserId;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code user}: adds a person who may sign in, or changes one. */
@Command(
        name = "user",
        mixinStandardHelpOptions = true,
        description = "Adds a person who may sign in, or changes one.",
        footer = {"", "Example:", "  tidegate user anna --role operator --role reader --password-file anna.secret"})
final class UserCommand implements Callable<Integer> {

    private static final int SHORTEST_PASSWORD = 12;

    @Parameters(paramLabel = "NAME", description = "Sign-in name.")
    private String name = "";

    @Option(
            names = "--role",
            required = true,
            paramLabel = "ROLE",
            description = "operator, reader, auditor, clinical_lead or data_protection_officer; may be repeated.")
    private List<Role> roles = List.of();

    @Option(
            names = "--display-name",
            paramLabel = "NAME",
            description = "As shown to others; default: the sign-in name.",
            defaultValue = "")
    private String displayName = "";

    @ArgGroup(multiplicity = "1")
    private Password secret = new Password();

    static final class Password {
        @Option(
                names = "--password-file",
                paramLabel = "FILE",
                description = "File whose first line is the password, 12 characters or more.")
        private @Nullable Path file;

        @Option(
                names = "--no-password",
                description = "Signs in at the provider of --openid-issuer only; NAME is the claim's value there.")
        private boolean none;
    }

    @Option(names = "--inactive", description = "May not sign in any more; the history keeps the name.")
    private boolean inactive;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private StoreOption storeOption = new StoreOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        if (List.of(UserId.DAEMON, UserId.POLICY).contains(new UserId(name))) {
            throw new Refusal("'" + name + "' is the program's own name in the ledger; choose another.");
        }
        String hash = secret.none || secret.file == null ? Passwords.NONE : Passwords.encode(password(secret.file));
        Set<Role> all = new TreeSet<>(roles);
        String shown = displayName.isBlank() ? name : displayName;
        try (Desk desk = storeOption.open(rulesOption.load())) {
            desk.store().write(tx -> {
                tx.users().save(new User(new UserId(name), shown, all, hash, !inactive));
                tx.record(
                        "user-saved",
                        UserId.DAEMON,
                        all.stream().map(Role::code).toList(),
                        Map.of("user", name));
                return true;
            });
        }
        spec.commandLine().getOut().println(name + " is saved.");
        return 0;
    }

    private static String password(Path passwordFile) {
        try {
            String password = Files.readString(passwordFile, StandardCharsets.UTF_8)
                    .lines()
                    .findFirst()
                    .orElse("")
                    .strip();
            if (password.length() < SHORTEST_PASSWORD) {
                throw new Refusal(
                        "the password in " + passwordFile + " has fewer than " + SHORTEST_PASSWORD + " characters.");
            }
            return password;
        } catch (IOException e) {
            throw new Refusal(passwordFile + " cannot be read: " + e.getMessage(), e);
        }
    }
}

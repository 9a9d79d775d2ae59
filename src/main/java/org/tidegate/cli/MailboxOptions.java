package org.tidegate.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidegate.mailbox.ImapAccount;
import org.tidegate.mailbox.Login;
import org.tidegate.mailbox.Marking;
import org.tidegate.mailbox.Server;
import org.tidegate.mailbox.TlsMode;
import picocli.CommandLine.Option;

/** The mailbox to watch. */
final class MailboxOptions {

    @Option(
            names = "--imap-host",
            required = true,
            paramLabel = "HOST",
            description = "IMAP server, as its certificate names it.")
    private String host = "";

    @Option(names = "--imap-port", paramLabel = "PORT", description = "Default: 993 for implicit TLS, 143 otherwise.")
    private @Nullable Integer port;

    @Option(
            names = "--imap-tls",
            paramLabel = "MODE",
            description = "implicit, starttls, or plain (this machine only). Default: ${DEFAULT-VALUE}.",
            defaultValue = "implicit")
    private String tls = "implicit";

    @Option(
            names = "--imap-trust",
            paramLabel = "FILE",
            description = "PEM file of certificates to trust instead of the platform's.")
    private @Nullable Path trust;

    @Option(names = "--imap-user", required = true, paramLabel = "NAME", description = "User name.")
    private String user = "";

    @Option(
            names = "--imap-password-file",
            paramLabel = "FILE",
            description =
                    "File whose first line is the password; else the environment variable TIDEGATE_IMAP_PASSWORD.")
    private @Nullable Path passwordFile;

    @Option(
            names = "--imap-token-file",
            paramLabel = "FILE",
            description =
                    "File whose first line is an OAuth 2.0 access token, read anew before every connection; another program keeps it fresh.")
    private @Nullable Path tokenFile;

    @Option(
            names = "--imap-folder",
            paramLabel = "NAME",
            description = "Folder that mail arrives in. Default: ${DEFAULT-VALUE}.",
            defaultValue = "INBOX")
    private String folder = "INBOX";

    @Option(
            names = "--imap-move-to",
            paramLabel = "FOLDER",
            description =
                    "Move taken messages there instead of giving them the keyword $TidegateTaken. Nothing is ever deleted.")
    private @Nullable String moveTo;

    @Option(
            names = "--imap-poll",
            paramLabel = "DURATION",
            description = "Look at least this often. Default: ${DEFAULT-VALUE}.",
            defaultValue = "PT5M")
    private Duration poll = Duration.ofMinutes(5);

    ImapAccount account() {
        try {
            TlsMode mode = TlsMode.valueOf(tls.toUpperCase(Locale.ROOT));
            int number = port == null ? (mode == TlsMode.IMPLICIT ? 993 : 143) : port;
            Server server = new Server(host, number, mode, Optional.ofNullable(trust));
            Marking marking = moveTo == null ? new Marking.Keyword("$TidegateTaken") : new Marking.Move(moveTo);
            return new ImapAccount(user, server, login(), folder, marking, 3, poll);
        } catch (IllegalArgumentException e) {
            throw new Refusal("the mailbox options do not fit: " + e.getMessage(), e);
        }
    }

    private Login login() {
        if (tokenFile != null) {
            return new Login(user, Secrets.firstLine(tokenFile), true);
        }
        if (passwordFile != null) {
            return new Login(user, Secrets.firstLine(passwordFile), false);
        }
        String password = System.getenv("TIDEGATE_IMAP_PASSWORD");
        if (password == null) {
            throw new Refusal(
                    "give --imap-password-file, --imap-token-file, or the environment variable TIDEGATE_IMAP_PASSWORD.");
        }
        return Login.password(user, password);
    }
}

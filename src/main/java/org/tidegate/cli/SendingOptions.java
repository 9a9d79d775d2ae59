package org.tidegate.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidegate.mailbox.Login;
import org.tidegate.mailbox.Outgoing;
import org.tidegate.mailbox.Server;
import org.tidegate.mailbox.SmtpSender;
import org.tidegate.mailbox.TlsMode;
import picocli.CommandLine.Option;

/** The server that letters go out through (RFC 6409); none leaves them in the outbox. */
final class SendingOptions {

    private static final int TLS_PORT = 465;
    private static final int STARTTLS_PORT = 587;

    @Option(
            names = "--smtp-host",
            paramLabel = "HOST",
            description =
                    "Server for sending letters, as its certificate names it. Without it letters wait in the outbox.")
    private @Nullable String host;

    @Option(names = "--smtp-port", paramLabel = "PORT", description = "Default: 465 for implicit TLS, 587 otherwise.")
    private @Nullable Integer port;

    @Option(
            names = "--smtp-tls",
            paramLabel = "MODE",
            description = "implicit, starttls, or plain (this machine only). Default: ${DEFAULT-VALUE}.",
            defaultValue = "implicit")
    private String tls = "implicit";

    @Option(
            names = "--smtp-trust",
            paramLabel = "FILE",
            description = "PEM file of certificates to trust instead of the platform's.")
    private @Nullable Path trust;

    @Option(names = "--smtp-user", paramLabel = "NAME", description = "User name; none where the server asks for none.")
    private @Nullable String user;

    @Option(names = "--smtp-password-file", paramLabel = "FILE", description = "File whose first line is the password.")
    private @Nullable Path passwordFile;

    @Option(
            names = "--smtp-token-file",
            paramLabel = "FILE",
            description = "File whose first line is an OAuth 2.0 access token, read anew before every connection.")
    private @Nullable Path tokenFile;

    Optional<Outgoing> outgoing() {
        if (host == null) {
            return Optional.empty();
        }
        try {
            TlsMode mode = TlsMode.valueOf(tls.toUpperCase(Locale.ROOT));
            int number = port == null ? (mode == TlsMode.IMPLICIT ? TLS_PORT : STARTTLS_PORT) : port;
            Server server = new Server(host, number, mode, Optional.ofNullable(trust));
            return Optional.of(new SmtpSender(server, Optional.ofNullable(user).map(this::login)));
        } catch (IllegalArgumentException e) {
            throw new Refusal("the options for sending do not fit: " + e.getMessage(), e);
        }
    }

    private Login login(String name) {
        if (tokenFile != null) {
            return new Login(name, Secrets.firstLine(tokenFile), true);
        }
        if (passwordFile != null) {
            return new Login(name, Secrets.firstLine(passwordFile), false);
        }
        throw new Refusal("--smtp-user needs --smtp-password-file or --smtp-token-file.");
    }
}

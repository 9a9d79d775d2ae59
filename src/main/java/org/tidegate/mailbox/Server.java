package org.tidegate.mailbox;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A mail server to connect to.
 *
 * @param host name, as its certificate bears it
 * @param port TCP port
 * @param tls how the connection is protected
 * @param trusted PEM file of certificates to trust instead of the platform's, for a server with a certificate of its own
 */
public record Server(String host, int port, TlsMode tls, Optional<Path> trusted) {

    public Server {
        if (tls == TlsMode.PLAIN && !isLoopback(host)) {
            throw new IllegalArgumentException("A connection without TLS is allowed to this machine only, not to "
                    + host + ": set tls to implicit or starttls.");
        }
    }

    private static boolean isLoopback(String host) {
        return host.equals("localhost") || host.equals("::1") || host.matches("127(\\.\\d{1,3}){3}");
    }

    @Override
    public String toString() {
        return host + ":" + port;
    }
}

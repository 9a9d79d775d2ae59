package org.tidegate.mailbox;

import jakarta.mail.Session;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.util.Optional;
import java.util.Properties;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManagerFactory;

/** Sessions of the mail library with this house's settings. */
final class MailSessions {

    private static final String CONNECT_MILLIS = "20000";
    private static final String WRITE_MILLIS = "60000";

    private MailSessions() {}

    /** The protocol's name in the library: {@code imap} becomes {@code imaps} with TLS from the first byte. */
    static String protocol(String base, Server server) {
        return server.tls() == TlsMode.IMPLICIT ? base + "s" : base;
    }

    /**
     * A session for one protocol.
     *
     * @param readMillis how long an answer may take
     */
    static Session session(String protocol, Server server, Optional<Login> login, long readMillis) {
        Properties p = new Properties();
        String prefix = "mail." + protocol + ".";
        p.setProperty(prefix + "connectiontimeout", CONNECT_MILLIS);
        p.setProperty(prefix + "timeout", String.valueOf(readMillis));
        p.setProperty(prefix + "writetimeout", WRITE_MILLIS);
        p.setProperty(prefix + "partialfetch", "false");
        p.setProperty(prefix + "peek", "true");
        p.setProperty(prefix + "ssl.checkserveridentity", "true");
        p.setProperty(prefix + "ssl.protocols", "TLSv1.2 TLSv1.3");
        p.setProperty(prefix + "starttls.enable", String.valueOf(server.tls() == TlsMode.STARTTLS));
        p.setProperty(prefix + "starttls.required", String.valueOf(server.tls() == TlsMode.STARTTLS));
        p.setProperty(prefix + "auth", String.valueOf(login.isPresent()));
        if (login.filter(Login::token).isPresent()) {
            p.setProperty(prefix + "auth.mechanisms", "XOAUTH2");
        }
        server.trusted().ifPresent(file -> p.put(prefix + "ssl.socketFactory", trusting(file)));
        return Session.getInstance(p);
    }

    private static SSLSocketFactory trusting(Path pem) {
        try (InputStream in = Files.newInputStream(pem)) {
            KeyStore store = KeyStore.getInstance(KeyStore.getDefaultType());
            store.load(null, null);
            for (Certificate c : CertificateFactory.getInstance("X.509").generateCertificates(in)) {
                store.setCertificateEntry("trusted-" + store.size(), c);
            }
            TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
            trust.init(store);
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(null, trust.getTrustManagers(), null);
            return context.getSocketFactory();
        } catch (IOException | GeneralSecurityException e) {
            throw new MailboxException("The certificates in " + pem + " cannot be read: " + e.getMessage(), e);
        }
    }
}

package org.tidegate.cli;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.security.KeyStore;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Debian's Dovecot as a child process: its own configuration, certificate and Maildir in one folder, on a free port of loopback.
 * It wants to be started by root and serves mail as nobody.
 */
final class Dovecot implements AutoCloseable {

    static final Path PROGRAM = Path.of("/usr/sbin/dovecot");
    private static final String KEY_PASSWORD = "changeit";

    private final Path folder;
    private final int port;
    private final UserPrincipal nobody;
    private final Process process;

    Dovecot(Path folder) throws Exception {
        this.folder = folder;
        this.port = freePort();
        this.nobody = folder.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName("nobody");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        for (String part : List.of("cur", "new", "tmp")) {
            Files.createDirectories(maildir(part));
        }
        for (Path p : List.of(folder.resolve("home"), maildir("."), maildir("cur"), maildir("new"), maildir("tmp"))) {
            Files.setOwner(p, nobody);
        }
        certificate();
        Path configuration = Files.writeString(folder.resolve("dovecot.conf"), configuration());
        process = new ProcessBuilder(PROGRAM.toString(), "-F", "-c", configuration.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("out").toFile())
                .start();
        awaitAnswer();
    }

    int port() {
        return port;
    }

    /** Where its certificate lies, to be trusted. */
    Path certificateFile() {
        return folder.resolve("cert.pem");
    }

    Path keyFile() {
        return folder.resolve("key.pem");
    }

    /** Where a delivery agent puts what comes in. */
    Path maildir() {
        return maildir(".");
    }

    /** As a delivery agent does it (Maildir: written beside, then renamed into new). */
    void deliver(String name, byte[] raw) throws IOException {
        Path file = Files.write(maildir("tmp").resolve(name), raw);
        Files.setOwner(file, nobody);
        Files.move(file, maildir("new").resolve(name));
    }

    /** How many messages bear the keyword, by the server's own files. */
    long marked(String keyword) throws IOException {
        String letters = Files.readString(maildir("dovecot-keywords"));
        char letter = letters.lines()
                .filter(l -> l.endsWith(" " + keyword))
                .map(l -> (char) ('a' + Integer.parseInt(l.split(" ")[0])))
                .findFirst()
                .orElseThrow();
        try (Stream<Path> files = Files.list(maildir("cur"))) {
            return files.map(f -> f.getFileName().toString())
                    .filter(n -> n.substring(n.indexOf(":2,") + 1).indexOf(letter) >= 0)
                    .count();
        }
    }

    String log() throws IOException {
        Path log = folder.resolve("dovecot.log");
        return (Files.exists(log) ? Files.readString(log) : "") + Files.readString(folder.resolve("out"));
    }

    private Path maildir(String part) {
        return folder.resolve("home/Maildir").resolve(part).normalize();
    }

    private String configuration() {
        return """
                base_dir = %1$s/run
                state_dir = %1$s/state
                log_path = %1$s/dovecot.log
                listen = 127.0.0.1
                protocols = imap
                ssl = required
                ssl_cert = <%1$s/cert.pem
                ssl_key = <%1$s/key.pem
                mail_location = maildir:~/Maildir
                service imap-login {
                  inet_listener imap {
                    port = 0
                  }
                  inet_listener imaps {
                    port = %2$d
                    ssl = yes
                  }
                }
                passdb {
                  driver = static
                  args = password=%3$s
                }
                userdb {
                  driver = static
                  args = uid=nobody gid=nogroup home=%1$s/home
                }
                """.formatted(folder, port, CrashMail.PASSWORD);
    }

    private void certificate() throws Exception {
        Path store = folder.resolve("key.p12");
        run(List.of(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-genkeypair",
                "-keyalg",
                "RSA",
                "-dname",
                "CN=localhost",
                "-ext",
                "SAN=dns:localhost,ip:127.0.0.1",
                "-validity",
                "2",
                "-alias",
                "imap",
                "-storepass",
                KEY_PASSWORD,
                "-keystore",
                store.toString()));
        KeyStore keys = KeyStore.getInstance(store.toFile(), KEY_PASSWORD.toCharArray());
        pem(
                "key.pem",
                "PRIVATE KEY",
                keys.getKey("imap", KEY_PASSWORD.toCharArray()).getEncoded());
        pem("cert.pem", "CERTIFICATE", keys.getCertificate("imap").getEncoded());
    }

    private void pem(String name, String kind, byte[] bytes) throws IOException {
        String text = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(bytes);
        Files.writeString(
                folder.resolve(name),
                "-----BEGIN " + kind + "-----\n" + text + "\n-----END " + kind + "-----\n",
                StandardCharsets.US_ASCII);
    }

    private void run(List<String> command) throws Exception {
        Process child = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("out").toFile())
                .start();
        if (!child.waitFor(120, TimeUnit.SECONDS) || child.exitValue() != 0) {
            throw new IllegalStateException(log());
        }
    }

    private void awaitAnswer() throws Exception {
        for (int tries = 0; tries < 300 && process.isAlive(); tries++) {
            try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
                return;
            } catch (IOException e) {
                Thread.sleep(100);
            }
        }
        throw new IllegalStateException("Dovecot does not answer: " + log());
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    @Override
    public void close() throws Exception {
        process.destroy();
        if (!process.waitFor(30, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
    }
}

package org.tidegate.cli;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Debian's Exim as a child process, the clinic's mail host: it takes mail for the intake from anybody and puts it into Dovecot's
 * Maildir; mail to others only from who has signed in over TLS, and keeps it to be looked at. Its configuration, queue and logs lie
 * in one folder; it wants to be started by root and works as nobody.
 */
final class Exim implements AutoCloseable {

    static final Path PROGRAM = Path.of("/usr/sbin/exim4");
    static final String USER = "results";

    /** This host knows of no such person. */
    static final String UNKNOWN = "unknown.person@tarnpost.example";

    private final Path folder;
    private final int port;
    private final Process process;

    /** @param inbox whose server's Maildir and certificate it uses */
    Exim(Path folder, Dovecot inbox) throws Exception {
        this.folder = folder;
        this.port = freePort();
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        UserPrincipal nobody =
                folder.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName("nobody");
        for (String part : List.of("spool", "log", "post")) {
            Files.setOwner(Files.createDirectory(folder.resolve(part)), nobody);
        }
        Path configuration = Files.writeString(folder.resolve("exim.conf"), configuration(inbox));
        process = new ProcessBuilder(PROGRAM.toString(), "-C", configuration.toString(), "-bdf", "-q1h")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("out").toFile())
                .start();
        awaitAnswer();
    }

    int port() {
        return port;
    }

    /** Messages to others than ourselves, as they would have gone on. */
    List<byte[]> wentOut() throws IOException {
        Path post = folder.resolve("post/new");
        if (!Files.exists(post)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(post)) {
            return files.sorted().map(Exim::read).toList();
        }
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    String log() throws IOException {
        Path log = folder.resolve("log/mainlog");
        return (Files.exists(log) ? Files.readString(log) : "") + Files.readString(folder.resolve("out"));
    }

    private String configuration(Dovecot inbox) {
        return """
                primary_hostname = mx.skarrasound.example
                exim_user = nobody
                exim_group = nogroup
                deliver_drop_privilege = true
                keep_environment =
                spool_directory = %1$s/spool
                log_file_path = %1$s/log/%%slog
                pid_file_path = %1$s/spool/exim.pid
                local_interfaces = <; 127.0.0.1
                daemon_smtp_ports = %2$d
                host_lookup =
                rfc1413_hosts =
                tls_advertise_hosts = *
                tls_certificate = %3$s
                tls_privatekey = %4$s
                auth_advertise_hosts = ${if def:tls_in_cipher {*}{}}
                acl_smtp_rcpt = recipient
                acl_smtp_data = anything
                begin acl
                recipient:
                  accept local_parts = intake
                  deny message = no such person
                       recipients = %7$s
                  accept authenticated = *
                  deny message = sign in first
                anything:
                  accept
                begin routers
                intake:
                  driver = accept
                  local_parts = intake
                  transport = intake
                others:
                  driver = accept
                  transport = post
                begin transports
                intake:
                  driver = appendfile
                  maildir_format
                  directory = %5$s
                post:
                  driver = appendfile
                  maildir_format
                  directory = %1$s/post
                begin authenticators
                plain:
                  driver = plaintext
                  public_name = PLAIN
                  server_prompts = :
                  server_condition = ${if and{{eq{$auth2}{%8$s}}{eq{$auth3}{%6$s}}}}
                  server_set_id = $auth2
                """.formatted(
                        folder,
                        port,
                        inbox.certificateFile(),
                        inbox.keyFile(),
                        inbox.maildir(),
                        CrashMail.PASSWORD,
                        UNKNOWN,
                        USER);
    }

    private void awaitAnswer() throws Exception {
        for (int tries = 0; tries < 300 && process.isAlive(); tries++) {
            try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
                return;
            } catch (IOException e) {
                Thread.sleep(100);
            }
        }
        throw new IllegalStateException("Exim does not answer: " + log());
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

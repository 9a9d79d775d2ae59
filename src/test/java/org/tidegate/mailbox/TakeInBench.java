package org.tidegate.mailbox;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Drains a mailbox into files as the daemon does before it examines: fetch over TLS, hash, write, fsync of file and folder, and
 * only then mark. Run beside a bare download of the same mailbox; not a unit test.
 *
 * <p>Arguments: host, port, PEM file of the certificate, user, password, folder to write into, keyword, connections.
 */
final class TakeInBench {

    private TakeInBench() {}

    public static void main(String[] args) throws Exception {
        Server server = new Server(args[0], Integer.parseInt(args[1]), TlsMode.IMPLICIT, Optional.of(Path.of(args[2])));
        ImapAccount account = new ImapAccount(
                "bench",
                server,
                Login.password(args[3], args[4]),
                "INBOX",
                new Marking.Keyword(args[6]),
                Integer.parseInt(args[7]),
                Duration.ofMinutes(1));
        Path out = Files.createDirectories(Path.of(args[5], "cur"));
        long start = System.nanoTime();
        try (FileChannel folder = FileChannel.open(out, StandardOpenOption.READ);
                ImapWatcher watcher = new ImapWatcher(
                        account, (sighting, raw) -> keep(out, folder, raw), event -> {}, Pause.sleeping())) {
            int taken = watcher.drain();
            System.out.printf("took %d in %.2f s%n", taken, (System.nanoTime() - start) / 1e9);
        }
    }

    private static Intake.Receipt keep(Path out, FileChannel folder, byte[] raw) {
        String name = HexFormat.of().formatHex(sha256(raw));
        Path part = out.resolve(name + ".part");
        try (FileChannel file = FileChannel.open(part, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(raw);
            while (bytes.hasRemaining()) {
                file.write(bytes);
            }
            file.force(true);
            Files.move(part, out.resolve(name), StandardCopyOption.ATOMIC_MOVE);
            folder.force(true);
            return Intake.Receipt.NEW;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] sha256(byte[] raw) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(raw);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}

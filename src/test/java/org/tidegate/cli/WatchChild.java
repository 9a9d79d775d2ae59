package org.tidegate.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/** A Java process of its own with this test's class path, ended by SIGKILL. */
final class WatchChild {

    /** What a process ended by SIGKILL (9) gives on Linux. */
    static final int KILLED = 128 + 9;

    private final Process process;
    private final BufferedReader out;

    private WatchChild(Process process) {
        this.process = process;
        this.out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /**
     * Starts a process.
     *
     * @param log gets what it writes to its standard error
     * @param heap the most memory for its objects, as -Xmx wants it
     */
    static WatchChild start(Path log, String heap, Class<?> main, Object... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + heap,
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        for (Object argument : arguments) {
            command.add(argument.toString());
        }
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.appendTo(log.toFile()));
        builder.environment().put("TIDEGATE_IMAP_PASSWORD", CrashMail.PASSWORD);
        return new WatchChild(builder.start());
    }

    /** Waits for a line; false where the process ended without it. */
    boolean says(String words) throws IOException {
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.contains(words)) {
                return true;
            }
        }
        return false;
    }

    /** All that it still writes. */
    String rest() {
        return out.lines().collect(Collectors.joining("\n"));
    }

    boolean ended() {
        return !process.isAlive();
    }

    /** Waits for the end. */
    int code() throws InterruptedException {
        if (!process.waitFor(300, TimeUnit.SECONDS)) {
            throw new IllegalStateException("the process does not end");
        }
        return process.exitValue();
    }

    /** @return the exit code */
    int kill() throws InterruptedException {
        process.destroyForcibly();
        return code();
    }
}

package org.tidegate.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How long the packaged {@code watch} takes from its start to a console that can be opened and a first look at the mailbox. Not a unit
 * test; run it by {@code java -cp target/test-classes:target/classes:… org.tidegate.cli.StartBench target/tidegate.jar}.
 */
final class StartBench {

    private static final int TIMES = 5;

    private StartBench() {}

    public static void main(String[] arguments) throws Exception {
        Path jar = Path.of(arguments[0]);
        Path folder = Files.createTempDirectory("tidegate-start");
        List<Long> all = new ArrayList<>();
        try (CrashMail mail = new CrashMail()) {
            for (int i = 0; i < TIMES; i++) {
                all.add(start(jar, folder, mail.port()));
            }
        }
        Collections.sort(all);
        System.out.printf("watch, from start to its console: %d ms median of %s%n", all.get(TIMES / 2), all);
    }

    private static long start(Path jar, Path folder, int port) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-jar",
                        jar.toString(),
                        "watch",
                        "--port",
                        "0",
                        "--data",
                        folder.resolve("data").toString(),
                        "--imap-host",
                        "127.0.0.1",
                        "--imap-port",
                        Integer.toString(port),
                        "--imap-tls",
                        "plain",
                        "--imap-user",
                        CrashMail.USER)
                .redirectError(
                        ProcessBuilder.Redirect.appendTo(folder.resolve("log").toFile()));
        builder.environment().put("TIDEGATE_IMAP_PASSWORD", CrashMail.PASSWORD);
        long begin = System.nanoTime();
        Process process = builder.start();
        try {
            awaitConsole(process);
            return (System.nanoTime() - begin) / 1_000_000;
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    private static void awaitConsole(Process process) throws IOException {
        BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.startsWith("The console is at")) {
                return;
            }
        }
        throw new IllegalStateException("watch ended before its console was there");
    }
}

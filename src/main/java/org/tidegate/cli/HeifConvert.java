package org.tidegate.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.tidegate.examination.picture.OutsideDecoder;

/**
 * Converts HEIC by libheif's {@code heif-convert} in a child process, limited in memory and time: a decoder of hostile input does not run in
 * the process that holds the keys.
 */
public final class HeifConvert implements OutsideDecoder {

    private static final long SECONDS = 20;
    private static final long MEMORY_BYTES = 1L << 30;
    private static final long MOST_BYTES = 60L << 20;

    private final Path converter;
    private final Optional<Path> limiter;

    private HeifConvert(Path converter, Optional<Path> limiter) {
        this.converter = converter;
        this.limiter = limiter;
    }

    /**
     * @param searchPath folders in the notation of the PATH variable
     * @return empty where no converter is installed
     */
    public static Optional<HeifConvert> installed(String searchPath) {
        return find(searchPath, "heif-convert").map(c -> new HeifConvert(c, find(searchPath, "prlimit")));
    }

    private static Optional<Path> find(String searchPath, String program) {
        return Stream.of(searchPath.split(File.pathSeparator))
                .filter(folder -> !folder.isBlank())
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
    }

    @Override
    public Optional<byte[]> toJpeg(byte[] content) {
        try {
            Path folder = Files.createTempDirectory("tidegate-heif");
            try {
                return convert(folder, content);
            } finally {
                clear(folder);
            }
        } catch (IOException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    private Optional<byte[]> convert(Path folder, byte[] content) throws IOException, InterruptedException {
        Path in = Files.write(folder.resolve("in.heic"), content);
        Path out = folder.resolve("out.jpg");
        Process process = new ProcessBuilder(command(in, out))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
            return Optional.empty();
        }
        boolean usable = process.exitValue() == 0 && Files.exists(out) && Files.size(out) <= MOST_BYTES;
        return usable ? Optional.of(Files.readAllBytes(out)) : Optional.empty();
    }

    private List<String> command(Path in, Path out) {
        List<String> command = new ArrayList<>();
        limiter.ifPresent(l -> command.addAll(List.of(l.toString(), "--as=" + MEMORY_BYTES, "--cpu=" + SECONDS)));
        command.addAll(List.of(converter.toString(), "-q", "92", in.toString(), out.toString()));
        return command;
    }

    private static void clear(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.deleteIfExists(file);
            }
        }
        Files.deleteIfExists(folder);
    }
}

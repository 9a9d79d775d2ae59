package org.tidegate.examination.picture;

import com.code_intelligence.jazzer.Jazzer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.tidegate.examination.picture.mrz.Mrz;
import org.tidegate.message.PdfStreamsProperties;

/**
 * Fuzz target of the parsers of picture files, zones and a PDF's streams that are our own (Jazzer). {@code main} writes the seeds and starts the fuzzer: a folder to
 * work in and seconds to run.
 */
public final class PictureFuzz {

    private static final int MOST_BYTES = 8_000;

    private PictureFuzz() {}

    /** Called by Jazzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        int scans = JpegScans.count(data);
        require(scans >= 0 && scans <= data.length / 2, "more scans than markers fit");
        if (PictureFormat.of(data) == PictureFormat.PNG) {
            byte[] records = PngRecords.of(data);
            require(records.length <= data.length, "more records than file");
            require(PngRecords.of(records).length == records.length, "records that are none the second time");
        }
        FileFactsReader.read(data);
        PdfStreamsProperties.check(data);
        Mrz.of(new String(data, StandardCharsets.ISO_8859_1).lines().toList())
                .ifPresent(zone -> require(zone.lines().size() >= 2, "a zone of one line"));
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        Path corpus = Files.createDirectories(Path.of(args[0]));
        Files.write(corpus.resolve("seed-png"), TestPictures.encode(TestPictures.scene(24, 18, 1), "png"));
        Files.write(corpus.resolve("seed-jpeg"), TestPictures.jpeg(TestPictures.scene(24, 18, 1), 0.5, false));
        Files.write(corpus.resolve("seed-progressive"), TestPictures.jpeg(TestPictures.scene(24, 18, 1), 0.5, true));
        Files.writeString(
                corpus.resolve("seed-zone"),
                "P<UTOERIKSSON<<ANNA<MARIA<<<<<<<<<<<<<<<<<<<\nL898902C36UTO7408122F1204159ZE184226B<<<<<10\n");
        for (int times = 0; times < 3; times++) {
            Files.write(corpus.resolve("seed-pdf-" + times), PdfStreamsProperties.seed(times));
        }
        Jazzer.main(List.of(
                        "--target_class=" + PictureFuzz.class.getName(),
                        "--instrumentation_includes=org.tidegate.examination.picture.**:org.tidegate.message.**",
                        "--custom_hook_includes=org.tidegate.examination.picture.**",
                        "--reproducer_path=" + corpus,
                        "-artifact_prefix=" + corpus + "/",
                        "-max_len=" + MOST_BYTES,
                        "-max_total_time=" + args[1],
                        corpus.toString())
                .toArray(String[]::new));
    }
}

package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.render.ZonePhoto;

/** {@code read-mrz} on a rendered document, on bytes that are no picture, and against its schema. */
class ReadMrzCommandTest {

    @TempDir
    Path folder;

    @Test
    void readsDrawsAndKeepsToItsSchema() throws IOException {
        ZonePhoto photo = ZonePhoto.of(20, false, new Random(5));
        Path file = Files.write(folder.resolve("card.jpg"), photo.jpeg());
        Path drawn = folder.resolve("seen.png");
        Ran ran = Ran.command("read-mrz", "--picture", drawn, file);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains(
                        "\"found\":true,\"format\":\"TD1\"",
                        "\"valid\":true",
                        photo.lines().get(0));
        assertThat(drawn).isNotEmptyFile();
        String schema = Files.readString(Path.of("shared/schemas/read-mrz.schema.json"));
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(schema)
                        .validate(ran.out(), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void namesWhatIsNoPicture() throws IOException {
        Path file = Files.writeString(folder.resolve("note.jpg"), "no picture");
        Ran ran = Ran.command("read-mrz", file);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("note.jpg is no picture that can be decoded here");
    }
}

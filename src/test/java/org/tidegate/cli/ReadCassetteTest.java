package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.awt.Polygon;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.render.SamplePhoto;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The {@code read-cassette} command on rendered photos; its lines pass an independent validator of JSON Schema. */
class ReadCassetteTest {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    @TempDir
    private Path dir;

    @Test
    void tellsTheCassetteItsLinesAndTheCard() throws IOException {
        Path photo = photo("photo.jpg", SamplePhoto.seed(7).lines(0.5, 0.8));
        Path drawing = dir.resolve("seen.png");
        Ran ran = Ran.command("read-cassette", "--picture", drawing, photo);
        assertThat(ran.code()).as(ran.err()).isZero();
        JsonNode answer = JSON.readTree(ran.out());
        assertThat(violations(ran.out())).isEmpty();
        assertThat(answer.at("/cassettes/0/kit").asString()).isEqualTo("SKERRY-20");
        assertThat(answer.at("/cassettes/0/lines/C/present").asBoolean()).isTrue();
        assertThat(answer.at("/cassettes/0/lines/T/present").asBoolean()).isTrue();
        assertThat(answer.at("/identity_document/present").asBoolean()).isTrue();
        assertThat(box(answer, "/cassettes/0/box").intersects(box(answer, "/identity_document/box")))
                .isFalse();
        assertThat(box(answer, "/identity_document/box").contains(box(answer, "/identity_document/portrait")))
                .isTrue();
        assertThat(ImageIO.read(drawing.toFile()).getWidth()).isEqualTo(1200);
    }

    @Test
    void tellsTwoCassettesApart() throws IOException {
        Path photo = photo("two.jpg", SamplePhoto.seed(8).withoutCard().cassettes(2));
        Ran ran = Ran.command("read-cassette", photo);
        assertThat(JSON.readTree(ran.out()).at("/cassettes").size()).isEqualTo(2);
        assertThat(violations(ran.out())).isEmpty();
    }

    @Test
    void namesWhatIsNoPictureAndGoesOn() throws IOException {
        Path broken = Files.write(dir.resolve("broken.jpg"), new byte[] {1, 2, 3});
        Path photo = photo("photo.jpg", SamplePhoto.seed(7).withoutCassette());
        Ran ran = Ran.command("read-cassette", broken, photo);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("broken.jpg is no picture that can be decoded here");
        assertThat(JSON.readTree(ran.out()).at("/cassettes").size()).isZero();
    }

    /** The upright rectangle about four corners. */
    private static Rectangle2D box(JsonNode answer, String at) {
        assertThat(answer.at(at).size()).isEqualTo(4);
        Polygon corners = new Polygon();
        answer.at(at)
                .forEach(c -> corners.addPoint(
                        c.get(0).asDecimal().intValue(), c.get(1).asDecimal().intValue()));
        return corners.getBounds2D();
    }

    private Path photo(String name, SamplePhoto photo) throws IOException {
        return Files.write(dir.resolve(name), photo.jpeg());
    }

    private static List<Error> violations(String answer) throws IOException {
        String schema = Files.readString(Path.of("shared/schemas/read-cassette.schema.json"));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema)
                .validate(JSON.readTree(answer));
    }
}

package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.PictureFinding;
import org.tidegate.message.Limits;
import org.tidegate.message.MailMessage;
import org.tidegate.message.MessageReader;

/** Pictures of the thirteen visible messages (../shared/data/messages-visible, made by another hand). */
class VisibleMessagesTest {

    @Test
    void everyPictureIsDecoded() throws IOException {
        Path folder = OutsideData.path("messages-visible");
        PictureExaminer examiner = new PictureExaminer(LiveRules.read());
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".eml")).sorted().toList()) {
                MailMessage message = MessageReader.read(Files.readAllBytes(file), Limits.standard());
                PictureResult result = examiner.examine(
                        message.attachments(), new DeliveryFacts(Optional.empty(), new byte[16], List.of()));
                assertThat(result.pictures())
                        .as(file.toString())
                        .isNotEmpty()
                        .allSatisfy(p -> assertThat(p.readable()).isEqualTo(PictureFinding.Decoding.DECODED))
                        .allSatisfy(p -> assertThat(p.kind()).isEqualTo(PictureFinding.Kind.PHOTO));
            }
        }
    }
}

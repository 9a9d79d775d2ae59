package org.tidegate.examination.picture.mrz;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.examination.picture.OutsideData;
import org.tidegate.examination.picture.PictureFile;
import org.tidegate.finding.PictureFinding.Bearer;
import org.tidegate.message.Limits;
import org.tidegate.message.MessageReader;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;

/**
 * Documents on the visible messages (../shared/data/messages-visible, rendered by another hand); name and birth
 * are those of their appointments.csv, the rest was transcribed from the picture.
 */
class VisibleZonesTest {

    private final MrzReader reader = new MrzReader();

    @ParameterizedTest
    @CsvSource({
        "041-read-early,       TD3, MOSSERTHWAITE, DUNCAN, 620617, 2MU8817JD",
        "043-clock-wrong-fast, TD1, THEVEC,        BENOIT, 980117, 2P5Z75P1R",
    })
    void areRead(String file, MrzFormat format, String surname, String given, String birth, String number) {
        ZoneReading zone = read(file).orElseThrow();
        assertThat(zone.text().format()).isEqualTo(format);
        assertThat(zone.valid()).as("" + zone).isTrue();
        assertThat(zone.undecided()).isEmpty();
        assertThat(zone.bearer()).contains(new Bearer(surname, given, birth));
        assertThat(zone.text().documentNumber()).isEqualTo(number);
    }

    @ParameterizedTest
    @CsvSource({"027-perfect-timer", "036-abroad-unset-zone", "040-photo-unreadable-blur", "074-perfect-stated"})
    void noneIsReadWhereNoneIs(String file) {
        assertThat(read(file)).isEmpty();
    }

    private Optional<ZoneReading> read(String file) {
        Path path = OutsideData.path("messages-visible/" + file + ".eml");
        byte[] picture = MessageReader.read(OutsideData.bytes(path), Limits.standard())
                .attachments()
                .get(0)
                .content();
        return PictureFile.open(
                        picture,
                        ((RulesResult.Loaded) RulesReader.bundled()).rules().pictures())
                .flatMap(reader::find);
    }
}

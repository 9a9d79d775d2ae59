package org.tidegate.examination.picture;

import java.util.List;
import java.util.Locale;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.render.TestScene;
import org.tidegate.rules.Rules;

/** How often the finders are right on rendered pictures. */
final class SceneTally {

    private final SceneFinder finder;
    int pictures;
    int withCassette;
    int found;
    int countRight;
    int documentRight;
    int readable;
    int cassettesFound;
    int controlRight;
    int lined;
    int linedFound;
    int blank;
    int blankFalse;

    SceneTally(Rules rules) {
        finder = new SceneFinder(rules.protocols(), rules.pictures(), ZoneReader.NONE);
    }

    void add(TestScene truth) {
        SceneReader.Scene seen = finder.read(FinePicture.of(truth.image()));
        List<CassetteFinding> cassettes = seen.cassettes();
        pictures++;
        withCassette += truth.cassettes() > 0 ? 1 : 0;
        found += truth.cassettes() > 0 && !cassettes.isEmpty() ? 1 : 0;
        countRight += cassettes.size() == truth.cassettes() ? 1 : 0;
        documentRight += seen.document().present() == truth.document() ? 1 : 0;
        readable += seen.legibility().orElseThrow().readable() ? 1 : 0;
        if (cassettes.size() == truth.cassettes()) {
            cassettes.forEach(c -> lines(c, truth.test() > 0));
        }
    }

    private void lines(CassetteFinding cassette, boolean tested) {
        cassettesFound++;
        controlRight += present(cassette, "C") ? 1 : 0;
        boolean test = present(cassette, "T");
        lined += tested ? 1 : 0;
        linedFound += tested && test ? 1 : 0;
        blank += tested ? 0 : 1;
        blankFalse += !tested && test ? 1 : 0;
    }

    private static boolean present(CassetteFinding cassette, String line) {
        Line found = cassette.lines().get(line);
        return found != null && found.present();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "pictures %d: cassette found %d of %d, count right %d, document right %d, readable %d;"
                        + " control line right %d of %d, test line found %d of %d, falsely %d of %d",
                pictures,
                found,
                withCassette,
                countRight,
                documentRight,
                readable,
                controlRight,
                cassettesFound,
                linedFound,
                lined,
                blankFalse,
                blank);
    }
}

package org.tidegate.thirdhand;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Draws up one picture: what lies where, how it is lit and seen, and what is true of it. */
final class Scene {

    /** Of a zone; with more hidden it is not there to be read. */
    private static final double MOST_HIDDEN = 0.5;

    /** Of what asks to be told. */
    private static final double HARDLY = 0.02;

    private static final double ZONE_HARDLY = 0.01;
    /** Cells of a relief, for memory. */
    private static final double CELLS = 14e6;
    /** Cells per pixel. */
    private static final double FINER = 1.12;

    private static final double AROUND = 10;

    private final Draws draws;
    private final Layout layout;
    private final View view;
    private final Arrangement arrangement;
    private final List<String> story = new ArrayList<>();

    Scene(Draws draws) {
        this.draws = draws;
        layout = new Layout(draws);
        List<Placed> things = layout.arrangement().things();
        view = View.drawn(draws, things);
        Surroundings surroundings = new Surroundings(draws, view, layout);
        story.addAll(layout.story());
        story.add("tilt " + Math.round(Math.toDegrees(view.tilt())));
        story.addAll(surroundings.story());
        arrangement = held(surroundings.arrangement(), things);
        tellHidden();
    }

    private Arrangement held(Arrangement untouched, List<Placed> things) {
        if (!draws.chance(untouched.held() ? 0.15 : 0.22) || things.isEmpty()) {
            return untouched;
        }
        Placed thing = things.get(draws.chance(0.35) ? things.size() - 1 : 0);
        Fingers fingers = new Fingers(draws, thing, view);
        story.add(fingers.story());
        Arrangement touched = untouched.withOver(fingers.placed());
        if (layout.cassettes().stream().anyMatch(c -> windowHidden(touched, c))) {
            story.add("(fingers dropped)");
            return untouched;
        }
        return touched;
    }

    private boolean windowHidden(Arrangement touched, Placed placed) {
        CassetteForm form = ((Cassette) placed.thing()).form();
        Rectangle2D window = new Rectangle2D.Double(
                form.windowAt - form.windowLength / 2, -form.windowWidth / 2, form.windowLength, form.windowWidth);
        return Sight.hidden(placed, window, touched.above(placed), Sight.of(view.camera())) > HARDLY;
    }

    private double hidden(Placed placed, double share) {
        return Sight.hidden(placed, share, arrangement.above(placed), Sight.of(view.camera()));
    }

    private void tellHidden() {
        layout.cassettes().forEach(c -> tellHidden("cassette", hidden(c, 0.95), HARDLY));
        layout.document().ifPresent(d -> tellHidden("document", hidden(d, 0.98), HARDLY));
        layout.document().ifPresent(d -> tellHidden("zone", zoneHidden(d), ZONE_HARDLY));
        layout.cassettes().stream().findFirst().map(c -> (Cassette) c.thing()).ifPresent(this::tellSize);
    }

    private void tellHidden(String what, double share, double hardly) {
        if (share > hardly) {
            story.add(Story.hidden(what, share));
        }
    }

    private void tellSize(Cassette cassette) {
        story.add(Story.format(
                "cassette %.0fpx long; line %.1fpx wide",
                cassette.form().length * view.scale(), cassette.lineWidth() * view.scale()));
    }

    /** 0 without a zone. */
    private double zoneHidden(Placed placed) {
        Document document = (Document) placed.thing();
        if (!document.kind().zone()) {
            return 0;
        }
        return Sight.hidden(placed, document.zone(), arrangement.above(placed), Sight.of(view.camera()));
    }

    private boolean zoneShown() {
        return layout.document()
                .filter(d -> ((Document) d.thing()).kind().zone())
                .filter(d -> zoneHidden(d) <= MOST_HIDDEN)
                .isPresent();
    }

    View view() {
        return view;
    }

    /** The light that the camera sees; adds to the story. */
    Frame light() {
        Light light = new Light(
                new Draws(layout.lightSeed()),
                view.span(),
                view.middle().x(),
                view.middle().y());
        story.add(light.story());
        return new Renderer(relief().softened(), light, view.camera()).render();
    }

    private Relief relief() {
        Bounds bounds = view.camera().seen().grown(AROUND);
        double scale = Math.min(view.scale() * FINER, Math.sqrt(CELLS / (bounds.width() * bounds.height())));
        Relief relief = Relief.of(arrangement.support(), bounds, scale);
        arrangement.flat().forEach(p -> put(relief, p));
        arrangement.things().forEach(p -> put(relief, p));
        arrangement.over().forEach(relief::put);
        return relief;
    }

    /** On the highest place below, so that folds do not poke through. */
    private void put(Relief relief, Placed placed) {
        relief.put(arrangement.held() ? placed : placed.raised(relief.under(placed)));
    }

    Truth truth(List<String> phone) {
        List<String> all = new ArrayList<>(story);
        all.addAll(phone);
        return new Truth(
                layout.cassettes().size(),
                layout.document().isPresent(),
                zoneShown(),
                layout.lines().control(),
                layout.lines().test(),
                all);
    }
}

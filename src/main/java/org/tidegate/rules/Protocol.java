package org.tidegate.rules;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

@Doc("What a kit demands. The kit's own leaflet and local rules prevail.")
public record Protocol(
        @Doc("Kit name in the book.") String kit,

        @Doc("Reading window opens this long after the test time.")
        Duration readFrom,

        @Doc("Reading window closes this long after the test time.")
        Duration readUntil,

        @Doc("How long after submit_from a message still counts.")
        Duration submitWithin,

        @Doc("From when submit_within counts: test, read_from or slot_end.")
        SubmitFrom submitFrom,

        @Doc("How long after a submission's first message a supplement still counts.")
        Duration supplementWithin,

        @Doc("Geometry of the cassette.") CassetteShape cassette) {

    public enum SubmitFrom {
        TEST,
        READ_FROM,
        SLOT_END
    }

    @Doc(
            "Where things lie on a cassette, as fractions of its length (from the end where the sample goes on) and width.")
    public record CassetteShape(
            @Doc("Length divided by width.") @Range(min = 1) double aspect,

            @Doc("Result window: start along the length.") @Range(max = 1)
            double windowFrom,

            @Doc("Result window: end along the length.") @Range(max = 1)
            double windowTo,

            @Doc("Result window: width as a fraction of the cassette's width.") @Range(max = 1)
            double windowWidth,

            @Doc("Lines in the window, in order from the sample end.")
            List<LinePlace> lines,

            @Doc("Where people write on it; without it, cassettes of this kit are never compared.")
            Optional<WritingPlace> writing) {}

    @Doc(
            "A part of the cassette's length, over its whole width, on which nothing is printed and people write mark, date and time.")
    public record WritingPlace(
            @Doc("Start along the length.") @Range(max = 1) double from,

            @Doc("End along the length.") @Range(max = 1) double to) {}

    @Doc("One line of a cassette.")
    public record LinePlace(
            @Doc("C for the control line, T for a test line, or the line's own name.")
            String name,

            @Doc("Position along the window, 0 at the sample end, 1 at the other.") @Range(max = 1)
            double at) {

        /** Name of the line that shows that a test worked. */
        public static final String CONTROL = "C";

        public boolean isControl() {
            return name.equals(CONTROL);
        }
    }
}

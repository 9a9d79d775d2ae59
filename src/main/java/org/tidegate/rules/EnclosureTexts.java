package org.tidegate.rules;

import java.util.List;

@Doc("The page that shows a participant who disputes how the times were judged.")
public record EnclosureTexts(
        @Doc("Headings.") Headings headings,
        @Doc("Which test it is about.") @Requires("ref") Template about,
        @Doc("How to read the drawing.") Template legend,
        @Doc("Whose clock a lane of the drawing is.") Lanes lanes,
        @Doc("What happened, as labels of the drawing.") Events events,
        @Doc("What each clock says.") Clues clues,

        @Doc("The window and the limit, counted from the test and as clock times.")
        @Requires({"photograph_from", "photograph_until", "send_by"})
        Template rule,

        @Doc("What follows from the clocks.") Verdicts verdicts,

        @Doc("What was taken for granted, after 'We took it that'.")
        Assumed assumed,

        @Doc("How to challenge it.") List<Template> challenge) {

    @Doc("Headings of the page.")
    public record Headings(
            @Doc("Of the page.") Template title,
            @Doc("Over what the clocks say.") Template evidence,
            @Doc("Over the rule.") Template rule,
            @Doc("Over the verdicts.") Template verdicts,
            @Doc("Over what was taken for granted.") Template assumed,
            @Doc("Over how to challenge it.") Template challenge) {}

    @Doc("Names of the drawing's lanes.")
    public record Lanes(
            @Doc("The clinic's own record.") Template clinic,
            @Doc("The participant's words.") Template words,
            @Doc("A phone.") @Requires("phone") Template phone,
            @Doc("GPS.") Template satellite,

            @Doc("Somebody else's mail server.") @Requires("host")
            Template server,

            @Doc("Our mail server.") Template ownServer) {}

    @Doc("Labels of the drawing.")
    public record Events(
            @Doc("The test began.") Template test,
            @Doc("The photo was taken.") Template photo,
            @Doc("The message was sent.") Template sent,
            @Doc("A mail server took it over.") Template passedOn,
            @Doc("A mail service signed it.") Template signed,
            @Doc("It reached us.") Template arrived,

            @Doc("Over the reading window.") @Requires({"from", "to"})
            Template photograph,

            @Doc("At the limit.") @Requires("time") Template sendBy) {}

    @Doc("One sentence for each kind of clue.")
    public record Clues(
            @Doc("The observer's timer.") @Requires({"from", "to"})
            Template timer,

            @Doc("The booked slot with its margins.") @Requires({"from", "to"})
            Template slot,

            @Doc("The time that the participant wrote.") @Requires({"from", "to"})
            Template wrote,

            @Doc("The device's clock for the photo.") @Requires("time")
            Template photo,

            @Doc("A file that was made after the photo.") @Requires("time")
            Template photoBy,

            @Doc("The GPS stamp of the photo.") @Requires("time")
            Template satellite,

            @Doc("How long after that stamp the photo was taken at most.") @Requires("time")
            Template satelliteBy,

            @Doc("The device's clock for the message.") @Requires("time")
            Template sent,

            @Doc("Another mail server.") @Requires({"host", "time"})
            Template passedOn,

            @Doc("A signature of a mail service.") @Requires({"host", "time"})
            Template signed,

            @Doc("Our mail server.") @Requires("time") Template arrived) {}

    @Doc("Verdicts and their figures.")
    public record Verdicts(
            Template photoInside,
            Template photoBeforeTest,
            Template photoEarly,
            Template photoLate,
            Template photoOpen,
            Template sentInside,
            Template sentLate,
            Template sentInTransit,
            Template sentOutage,
            Template sentOpen,
            @Requires("span") Template photoAtLeast,
            @Requires("span") Template photoAtMost,
            @Requires("span") Template photoBefore,
            @Requires("span") Template mailAtLeast,
            @Requires("span") Template mailAtMost,
            @Requires("span") Template phoneFast,
            @Requires("span") Template phoneSlow) {}

    @Doc("One part of a sentence for each assumption.")
    public record Assumed(
            Template samePhone,
            Template testInSlot,
            Template timerRight,
            @Requires("phone") Template clockRight,
            @Requires("host") Template serverHonest,
            Template handedOver,
            Template clinicZone,
            Template freshFix,
            Template statedInPhoneZone,
            Template statedIsTimer) {}
}

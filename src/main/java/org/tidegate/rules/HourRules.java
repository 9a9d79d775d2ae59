package org.tidegate.rules;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

@Doc("When people are there, and whom to tell when nobody is.")
public record HourRules(
        @Doc("Zone of the times in this file, IANA.") ZoneId zone,
        @Doc("The staffed times of the week.") List<Shift> shifts,

        @Doc("Address that the handover goes to when a shift begins; without it it is not sent.")
        Optional<String> handoverTo,

        @Doc("Address of the console, with which links in notices begin.")
        String consoleAddress,

        @Doc("Whom to wake; without it nobody is woken.") Optional<OnCall> onCall) {

    @Doc("A staffed time that comes every week.")
    public record Shift(
            @Doc("Days on which it begins.") List<DayOfWeek> days,
            @Doc("Wall time at which it begins.") LocalTime from,

            @Doc("Wall time at which it ends; not after its beginning: on the next day.")
            LocalTime until) {}

    @Doc("How the on-call person is told.")
    public record OnCall(
            @Doc("Address that wakes the on-call person.") String address,

            @Doc("Tell that person also while a shift is there.")
            boolean inHours,

            @Doc("Wake also for what waits for a person and is needed before the shift begins.")
            boolean beforeEmbarkation,

            @Doc("Wake again for the same submission after this time where nobody has taken it up.")
            Duration againAfter,

            @Doc("For the faults of wake_for in unattended.yaml.")
            Notice urgent,

            @Doc("For what is needed before the shift begins.")
            Notice embarkation) {}

    @Doc("A notice among ourselves; it names nobody.")
    public record Notice(
            @Doc("Subject line.") Template subject,
            @Doc("Paragraphs in order.") List<Template> paragraphs) {}
}

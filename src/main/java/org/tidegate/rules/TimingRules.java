package org.tidegate.rules;

import java.time.Duration;
import java.time.ZoneId;
import java.util.List;

@Doc("Clocks, tolerances and assumptions of the time verdicts (DESIGN 6).")
public record TimingRules(
        @Doc("The clinic's time zone, IANA name.") ZoneId zone,

        @Doc("Names of our own mail hosts; also the authserv-ids trusted in Authentication-Results.")
        List<String> ownHosts,

        @Doc("Networks in CIDR notation whose hosts are ours.")
        List<String> ownNetworks,

        @Doc("How far our own clocks may be off.") Duration ownClock,

        @Doc("How far another mail server's clock may be off.")
        Duration serverClock,

        @Doc("How far a phone's clock may be off before it counts as wrong.")
        Duration phoneClock,

        @Doc("Edges of the reading window are widened by this.")
        Duration grace,

        @Doc("How far a recorded timer may be off.") Duration timerWithin,
        @Doc("A test may start this long before its slot.") Duration slotBefore,
        @Doc("A test may start this long after its slot.") Duration slotAfter,

        @Doc("How far a stated test time may be off and still narrow the slot.")
        Duration statedWithin,

        @Doc("A stated time further than this from the recorded timer differs.")
        Duration statedDiffers,

        @Doc("A message is handed to its first server within this time.")
        Duration handedOver,

        @Doc("A longer gap between two hops marks the earlier one as doubtful.")
        Duration hopGap,

        @Doc("UTC offsets in use anywhere, for photos without an offset.")
        List<String> offsets,

        @Doc("Mail programs and camera makers that belong to one phone, where the name alone does not tell.")
        List<PhonePair> samePhone,

        @Doc("Words in a mail program's name that tell a webmail or desktop program.")
        List<String> notAPhone,

        @Doc("Which assumptions may be made.") List<String> assumptions,
        @Doc("Trust INTERNALDATE as the delivery time.") boolean internalDateIsDelivery) {

    @Doc("One pairing of a mail program with a camera make.")
    public record PhonePair(
            @Doc("Part of the mail program's name.") String program,
            @Doc("Part of the EXIF make or model.") String camera) {}
}

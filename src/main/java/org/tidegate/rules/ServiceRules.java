package org.tidegate.rules;

import java.time.Duration;
import java.util.List;

@Doc("The service itself: what it is called, what it promises, whom it wakes.")
public record ServiceRules(
        @Doc("Name in letters and on the screen.") String name,
        @Doc("Address that letters come from.") String senderAddress,

        @Doc("Own addresses besides: they are never answered.")
        List<String> ownAddresses,

        @Doc("Name beside the address.") String senderName,
        @Doc("Phone number of the clinic in every letter.") String phone,

        @Doc("Number for medical emergencies in every letter.")
        String urgentNumber,

        @Doc("Answer promised within this time after arrival.")
        Duration replyPromise,

        @Doc("A correction must be asked for this long before it is too late.")
        Duration correctionReserve,

        @Doc("A claimed submission is free again after this time.")
        Duration claimLapse,

        @Doc("A letter can be called back for this long.") Duration undoDelay,

        @Doc("Replies to one address a day at most.") @Range(min = 1, max = 100)
        int repliesPerAddress,

        @Doc("Languages of the letters, BCP 47; the first serves where a participant's has no texts.")
        List<String> languages) {}

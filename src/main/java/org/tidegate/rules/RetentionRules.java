package org.tidegate.rules;

import java.time.Period;

@Doc("How long what is kept, counted from the taking of the message. When the time is up, key and salt are destroyed.")
public record RetentionRules(
        @Doc("Pictures that show an identity document.") Period identityPictures,
        @Doc("All other pictures.") Period pictures,

        @Doc(
                "Cassettes cut out of pictures and kept by themselves, without what lay beside them; no longer than messages.")
        Period cassettes,

        @Doc("Raw messages.") Period messages,
        @Doc("Mail that was no submission.") Period aside,
        @Doc("Readings, result letters and certificates.") Period results,
        @Doc("Fingerprints for 'seen before?'.") Period fingerprints) {}

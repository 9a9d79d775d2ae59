package org.tidegate.rules;

import java.util.Map;
import org.tidegate.finding.DiscrepancyCode;

@Doc("All texts to participants in one language, in words that an eleven-year-old can follow.")
public record LetterTexts(
        @Doc("Name of the language in itself.") String name,

        @Doc("First line of every letter.") @Requires("name")
        Template greeting,

        @Doc("In every letter: urgent symptoms need urgent help.") @Requires("urgent_number")
        Template urgentHelp,

        @Doc("In every letter: whom to ask.") @Requires("clinic_phone")
        Template questions,

        @Doc("In every letter: who decides, and that local codes prevail.")
        Template caution,

        @Doc("Last line of every letter.") @Requires("service")
        Template signature,

        @Doc("Sent when a message was taken in.") Letter acknowledgement,
        @Doc("Sent when something is missing or wrong.") RequestLetter request,
        @Doc("Sent once before a request runs out.") Letter reminder,
        @Doc("Sent when a request has run out.") Letter expired,

        @Doc("Sent when the test does not count for reasons of procedure.")
        Letter voided,

        @Doc("Sent when a new test on a second kit is needed.")
        Letter repeat,

        @Doc("Result letter.") ResultLetter.Negative negative,
        @Doc("Result letter.") ResultLetter.Positive positive,
        @Doc("Result letter.") ResultLetter.Invalid invalid,

        @Doc("First paragraph of a revised letter; it names the original.") @Requires("original_date")
        Template amended,

        @Doc("Sent when a result is withdrawn.") Letter withdrawn,

        @Doc("Enclosed where a participant disputes a verdict on time.")
        EnclosureTexts enclosure,

        @Doc("What to say about each discrepancy.") Map<DiscrepancyCode, Wording> discrepancies) {}

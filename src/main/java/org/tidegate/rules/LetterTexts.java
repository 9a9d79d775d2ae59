package org.tidegate.rules;

import java.util.List;
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

        @Doc("How results are told in this language.") ResultWords resultWords,

        @Doc("Phrases that promise too much, such as 'you are healthy': no text may hold one of them.")
        List<String> neverSay,

        @Doc("Sent when a message was taken in.") PlainLetter.Acknowledgement acknowledgement,
        @Doc("Sent when something is missing or wrong.") RequestLetter request,
        @Doc("Sent once before a request runs out.") PlainLetter.Reminder reminder,

        @Doc("Sent while there is time where nothing came of a running test.")
        PlainLetter.NotHeard notHeard,

        @Doc("Sent where an answer will come later than promised.")
        PlainLetter.NewTime newTime,

        @Doc("Sent to someone who doubts a verdict on time, with the page that shows how it fell.")
        PlainLetter.Times times,

        @Doc("Sent when a request has run out.") PlainLetter.Expired expired,

        @Doc("Sent when the test does not count for reasons of procedure.")
        PlainLetter.Voided voided,

        @Doc("Sent when a new test on a second kit is needed.")
        PlainLetter.Repeat repeat,

        @Doc("Result letter.") ResultLetter.Negative negative,
        @Doc("Result letter.") ResultLetter.Positive positive,
        @Doc("Result letter.") ResultLetter.Invalid invalid,

        @Doc("First paragraph of a revised letter; it names the original.") @Requires("original_date")
        Template amended,

        @Doc("Sent when a result is withdrawn.") PlainLetter.Withdrawn withdrawn,

        @Doc("Enclosed where a participant disputes a verdict on time.")
        EnclosureTexts enclosure,

        @Doc("What to say about each discrepancy.") Map<DiscrepancyCode, Wording> discrepancies) {

    /** The letters that tell no result. */
    List<PlainLetter> plain() {
        return List.of(acknowledgement, reminder, notHeard, newTime, times, expired, voided, repeat, withdrawn);
    }

    List<ResultLetter> results() {
        return List.of(negative, positive, invalid);
    }
}

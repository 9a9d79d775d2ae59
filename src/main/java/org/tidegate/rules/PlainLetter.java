package org.tidegate.rules;

import java.util.List;
import java.util.Set;

/** A letter that tells no result. */
public sealed interface PlainLetter extends Letter {

    @Doc("Sent when a message was taken in.")
    record Acknowledgement(
            @Doc("Subject line: never a name or a result.") Template subject,
            @Doc("It is here.") @Requires("received") Template received,

            @Doc("Who looks at it, and when an answer comes.") @Requires("answer_by")
            Template answer,

            @Doc("Keep the cassette.") Template keep)
            implements PlainLetter {
        @Override
        public List<Template> blocks() {
            return List.of(received, answer, keep);
        }
    }

    @Doc("Sent once before a request runs out.")
    record Reminder(
            @Doc("Subject line: never a name or a result.") Template subject,
            @Doc("We asked and heard nothing.") Template asked,
            @Doc("Until when it counts.") @Requires("until") Template deadline)
            implements PlainLetter {
        @Override
        public List<Template> blocks() {
            return List.of(asked, deadline);
        }

        @Override
        public Set<String> known() {
            return Template.answeringAnd("until");
        }
    }

    @Doc("Sent while there is time to someone whose test is running and of whom nothing came.")
    record NotHeard(
            @Doc("Subject line: never a name or a result.") Template subject,
            @Doc("Nothing came yet.") @Requires("test_date") Template missing,

            @Doc("When to photograph and until when to send.")
            @Requires({"photograph_from", "photograph_until", "send_by"})
            Template windows,

            @Doc("What to do where it is too late.") Template otherwise)
            implements PlainLetter {
        @Override
        public List<Template> blocks() {
            return List.of(missing, windows, otherwise);
        }

        @Override
        public Set<String> known() {
            return Template.bookedAnd("photograph_from", "photograph_until", "send_by");
        }
    }

    @Doc("Sent to those whose answer will come later than promised.")
    record NewTime(
            @Doc("Subject line: never a name or a result.") Template subject,

            @Doc("What was promised, and that it will not be kept.") @Requires("answer_by")
            Template late,

            @Doc("The new time.") @Requires("new_time") Template newTime,
            @Doc("What to do meanwhile.") Template meanwhile)
            implements PlainLetter {
        @Override
        public List<Template> blocks() {
            return List.of(late, newTime, meanwhile);
        }

        @Override
        public Set<String> known() {
            return Template.answeringAnd("new_time");
        }
    }

    @Doc("Sent to someone who doubts a verdict on time; the page that shows how it fell goes with it.")
    record Times(
            @Doc("Subject line: never a name or a result.") Template subject,

            @Doc("Which test it is about.") @Requires("test_date")
            Template about,

            @Doc("What the enclosed page shows.") Template page,
            @Doc("What to do where it is wrong.") Template challenge)
            implements PlainLetter {
        @Override
        public List<Template> blocks() {
            return List.of(about, page, challenge);
        }
    }

    @Doc("Sent when a request has run out.")
    record Expired(
            @Doc("Subject line: never a name or a result.") Template subject,
            @Doc("What did not come.") Template missing,

            @Doc("The test does not count, which says nothing about health.")
            Template noAssurance,

            @Doc("How to get a new test.") Template next)
            implements PlainLetter {
        @Override
        public List<Template> blocks() {
            return List.of(missing, noAssurance, next);
        }
    }

    @Doc("Sent when the test does not count for reasons of procedure.")
    record Voided(
            @Doc("Subject line: never a name or a result.") Template subject,

            @Doc("It does not count.") @Requires("test_date")
            Template voided,

            @Doc("That says nothing about health.") Template noAssurance,
            @Doc("How to get a new test.") Template next)
            implements PlainLetter {
        @Override
        public List<Template> blocks() {
            return List.of(voided, noAssurance, next);
        }
    }

    @Doc("Sent when a new test on a second kit is needed.")
    record Repeat(
            @Doc("Subject line: never a name or a result.") Template subject,
            @Doc("A new kit.") Template newKit,
            @Doc("Nothing of the old kit.") Template oldKit,
            @Doc("A person must watch it.") Template observed)
            implements PlainLetter {
        @Override
        public List<Template> blocks() {
            return List.of(newKit, oldKit, observed);
        }
    }

    @Doc("Sent when a result is withdrawn.")
    record Withdrawn(
            @Doc("Subject line: never a name or a result.") Template subject,

            @Doc("Which letter no longer counts, and its certificate.") @Requires("original_date")
            Template withdrawn,

            @Doc("What comes next.") Template next)
            implements PlainLetter {
        @Override
        public List<Template> blocks() {
            return List.of(withdrawn, next);
        }

        @Override
        public Set<String> known() {
            return Template.answeringAnd("original_date");
        }
    }
}

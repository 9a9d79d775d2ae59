package org.tidegate.rules;

import java.util.List;

/** A result letter. Its required blocks are its keys, so that none can be forgotten; the result always stands first. */
public sealed interface ResultLetter extends Letter {

    /** The result, which stands first. */
    Template result();

    /** Every text of it, in whichever case it is read. */
    default List<Template> everything() {
        return blocks();
    }

    @Doc("Letter after a negative reading.")
    record Negative(
            @Doc("Subject line: never a name or a result.") Template subject,
            @Doc("The result, first of all.") Template result,

            @Doc("What it does not mean: no false assurance.")
            Template noAssurance,

            @Doc("What to do with the used kit.") Template disposal)
            implements ResultLetter {
        @Override
        public List<Template> blocks() {
            return List.of(result, noAssurance, disposal);
        }
    }

    @Doc("Letter after a positive reading.")
    record Positive(
            @Doc("Subject line: never a name or a result.") Template subject,
            @Doc("The result, first of all.") Template result,

            @Doc("Staying away from others, by local codes.")
            Template isolation,

            @Doc("The laboratory test that confirms.") Template confirmation,
            @Doc("What to do with the used kit.") Template disposal)
            implements ResultLetter {
        @Override
        public List<Template> blocks() {
            return List.of(result, isolation, confirmation, disposal);
        }
    }

    @Doc("Letter after an invalid reading: no control line.")
    record Invalid(
            @Doc("Subject line: never a name or a result.") Template subject,
            @Doc("The result, first of all.") Template result,
            @Doc("The new kit.") Template newKit,

            @Doc("After a second invalid: another lot and a laboratory test.")
            Template secondTime,

            @Doc("What to do with the used kit.") Template disposal)
            implements ResultLetter {
        @Override
        public List<Template> blocks() {
            return List.of(result, newKit, disposal);
        }

        @Override
        public List<Template> everything() {
            return List.of(result, newKit, secondTime, disposal);
        }

        /** The blocks after a second invalid in a row. */
        public List<Template> blocksAfterSecond() {
            return List.of(result, secondTime, disposal);
        }
    }
}

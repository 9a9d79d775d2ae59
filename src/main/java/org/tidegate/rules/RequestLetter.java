package org.tidegate.rules;

@Doc("The letter that merges the wordings of all discrepancies.")
public record RequestLetter(
        @Doc("Subject line: never a name or a result.") Template subject,
        @Doc("Paragraph before the wordings.") Template opening,

        @Doc("Paragraph after the wordings where a new photo would come too late.")
        Template over,

        @Doc("Last paragraph where something can still be put right.")
        Template ending) {}

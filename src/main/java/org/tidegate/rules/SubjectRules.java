package org.tidegate.rules;

import java.util.List;

@Doc("Words that subject lines are made of beside names and times.")
public record SubjectRules(
        @Doc("Reply and forward prefixes of mail programs, any language.")
        List<String> prefixes,

        @Doc("Titles and suffixes that are no part of the name.")
        List<String> titles,

        @Doc("Words around the facts that mean nothing here: test, result, swab, clinic, …")
        List<String> fillers,

        @Doc("Result words, any language.") List<String> resultWords,

        @Doc("Words of urgent symptoms or distress, any language; a phrase matches whole words.")
        List<String> urgentWords,

        @Doc("Characters of free text up to which a body may be a covering note.")
        int coveringNoteChars) {}

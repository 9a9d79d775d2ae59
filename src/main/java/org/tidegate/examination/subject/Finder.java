package org.tidegate.examination.subject;

/** Finds the candidates of one kind that start at a token. */
interface Finder {

    void find(Line line, int at, Candidates out);
}

package org.tidegate.rules;

/**
 * One thing wrong in the rule files.
 *
 * @param file relative to the rules folder
 * @param line from 1; 0 where the file as a whole is meant
 * @param column from 1; 0 where the file as a whole is meant
 * @param what what is wrong, plain English
 * @param hint what to write instead
 */
public record RuleFault(String file, int line, int column, String what, String hint) {

    /** {@code timing.yaml:3:7: what — hint}. */
    @Override
    public String toString() {
        String place = line == 0 ? file : file + ":" + line + ":" + column;
        return place + ": " + what + (hint.isEmpty() ? "" : " (" + hint + ")");
    }
}

package org.tidegate.finding;

/**
 * An attached file that could not be taken at face value.
 *
 * @param path the attachment path
 * @param kind unsafe or unsupported
 * @param words plain English for the operator
 */
public record FileProblem(String path, Kind kind, String words) {

    public enum Kind {
        /** A program, script, macro, encrypted archive, or over a limit. */
        UNSAFE,
        /** A picture or document that cannot be decoded here. */
        UNSUPPORTED
    }
}

package org.tidegate.work;

/**
 * A file that goes with a letter.
 *
 * @param fileName as the participant sees it: never a name of a person, never a result
 * @param mediaType RFC 6838
 */
public record Enclosed(String fileName, String mediaType, byte[] content) {}

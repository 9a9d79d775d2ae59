package org.tidegate;

import java.nio.file.Files;
import java.nio.file.Path;
import org.opentest4j.TestAbortedException;

/**
 * What a test needs from outside the project: data beside it, an installed program, a platform. Where it is missing the test is
 * skipped aloud; with {@code -Dtests.skips=fail}, as in {@code .ci/run}, it fails.
 */
public final class Needs {

    private Needs() {}

    /** @param what is needed, in words */
    public static void that(boolean there, String what) {
        if (there) {
            return;
        }
        if ("fail".equals(System.getProperty("tests.skips"))) {
            throw new AssertionError("needed and missing: " + what);
        }
        System.out.println("SKIPPED, missing: " + what);
        throw new TestAbortedException("skipped, missing: " + what);
    }

    /** A file or folder beside the project. */
    public static void outside(Path path) {
        that(Files.exists(path), path.toString());
    }
}

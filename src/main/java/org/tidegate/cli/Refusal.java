package org.tidegate.cli;

/** A command cannot go on: one clear line that says what to do, exit code 2, no stack trace. */
final class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1L;

    Refusal(String what) {
        super(what);
    }

    Refusal(String what, Throwable cause) {
        super(what, cause);
    }
}

package org.tidegate.finding;

/**
 * Who made a clue.
 *
 * @param kind whose clock it is
 * @param name the host, phone or person, for the derivation; several phones have different names
 */
public record Clock(Kind kind, String name) {

    public enum Kind {
        CLINIC(Level.RECORDED),
        OWN_SERVER(Level.RECORDED),
        OTHER_SERVER(Level.NETWORK),
        PHONE(Level.DEVICE),
        SATELLITE(Level.DEVICE),
        WORDS(Level.STATED);

        private final Level level;

        Kind(Level level) {
            this.level = level;
        }
    }

    public Level level() {
        return kind.level;
    }
}

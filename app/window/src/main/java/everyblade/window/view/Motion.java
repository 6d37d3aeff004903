package everyblade.window.view;

import everyblade.practice.drill.Tip;

/** A movement of the hands, with the keys that make it while the scope's picture has the focus. */
public enum Motion {
    IN("PAGE_UP", 14),
    OUT("PAGE_DOWN", 14),
    UP("UP", 45),
    DOWN("DOWN", 45),
    LEFT("LEFT", 45),
    RIGHT("RIGHT", 45),
    ROLL_LEFT("COMMA", 60),
    ROLL_RIGHT("PERIOD", 60),
    /** The rotor in the direction of rising clock angles, or the scope fed round a row that stands still. */
    CLOCKWISE("PLUS", 0.7),
    ANTICLOCKWISE("MINUS", 0.7);

    private final String key;
    private final double rate;

    Motion(String key, double rate) {
        this.key = key;
        this.rate = rate;
    }

    /** As {@code javax.swing.KeyStroke} reads it. */
    public String key() {
        return key;
    }

    /** How far it goes in a second: mm or degrees, of rotors pitches of the row in view. */
    double rate() {
        return rate;
    }

    /** The tip moved by so much; as it is for a rotor. */
    Tip of(Tip tip, double amount) {
        return switch (this) {
            case IN -> tip.pushed(amount);
            case OUT -> tip.pushed(-amount);
            case UP -> tip.bent(amount, 0);
            case DOWN -> tip.bent(-amount, 0);
            case RIGHT -> tip.bent(0, amount);
            case LEFT -> tip.bent(0, -amount);
            case ROLL_RIGHT -> tip.rolled(amount);
            case ROLL_LEFT -> tip.rolled(-amount);
            case CLOCKWISE, ANTICLOCKWISE -> tip;
        };
    }
}

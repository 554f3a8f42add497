package cuelead.dance;

/**
 * A turn in degrees: positive = right = clockwise seen from above, negative = left. A multiple of 45; may be
 * more than a full turn.
 */
public record Turn(int degrees) {
    public static final Turn NONE = new Turn(0);

    public Turn {
        if (degrees % 45 != 0) {
            throw new IllegalArgumentException("a turn is a multiple of 45 degrees: " + degrees);
        }
    }

    public boolean isNone() {
        return degrees == 0;
    }

    public Turn plus(Turn other) {
        return new Turn(degrees + other.degrees);
    }

    /** In how many walls a dance with this net turn comes round to the front; 1 when it does not turn. */
    public int walls() {
        int walls = 1;
        while (Math.floorMod((long) degrees * walls, 360) != 0) {
            walls++;
        }
        return walls;
    }

    public Turn mirrored() {
        return new Turn(-degrees);
    }

    /** As a fraction of a full turn: {@code 1/4 R}; {@code 1 1/4 L}; empty for none. */
    public String words() {
        int eighths = Math.abs(degrees) / 45;
        if (eighths == 0) {
            return "";
        }
        int parts = eighths % 8;
        String part =
                switch (Integer.numberOfTrailingZeros(parts)) {
                    case 0 -> parts + "/8";
                    case 1 -> parts / 2 + "/4";
                    case 2 -> "1/2";
                    default -> "";
                };
        String whole = eighths >= 8 ? eighths / 8 + (part.isEmpty() ? "" : " ") : "";
        return whole + part + (degrees > 0 ? " R" : " L");
    }
}

package cuelead.dance;

/** The direction faced, in degrees right of the front wall: 0 = 12:00, 90 = 3:00, ... 315 = 10:30. */
public record Facing(int degrees) {
    public static final Facing FRONT = new Facing(0);

    public Facing {
        if (degrees < 0 || degrees >= 360 || degrees % 45 != 0) {
            throw new IllegalArgumentException("a facing is one of 0, 45 ... 315 degrees: " + degrees);
        }
    }

    public Facing after(Turn turn) {
        return new Facing(Math.floorMod(degrees + turn.degrees(), 360));
    }

    /** The turn from the front to this facing, as 0 to 315 degrees right. */
    public Turn fromFront() {
        return new Turn(degrees);
    }

    /** As sheets print it: {@code 12:00}, {@code 1:30}, {@code 3:00} ... */
    public String clock() {
        int halfHours = degrees / 15;
        int hour = halfHours / 2 == 0 ? 12 : halfHours / 2;
        return hour + (halfHours % 2 == 0 ? ":00" : ":30");
    }
}

package cuelead.practice;

import cuelead.sound.Levels;
import cuelead.sound.Sides;

/** Where calls and clicks are heard. */
public enum CallsGo {
    WITH_THE_MUSIC(Sides.BOTH),
    /** The music is on the right. */
    LEFT(Sides.CALLS_LEFT),
    /** The music is on the left. */
    RIGHT(Sides.CALLS_RIGHT),
    /** On a device of their own. */
    APART(Sides.BOTH);

    private final Sides sides;

    CallsGo(Sides sides) {
        this.sides = sides;
    }

    /** How far music goes down at first: where the calls are not, dancers would only wonder at it. */
    public double usualDipDb() {
        return this == WITH_THE_MUSIC ? Levels.EVEN.dipDb() : 0;
    }

    public Sides sides() {
        return sides;
    }
}

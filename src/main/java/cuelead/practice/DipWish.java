package cuelead.practice;

import cuelead.sound.Dipping;
import cuelead.sound.Levels;
import java.util.OptionalDouble;

/**
 * How the music is to go down under the calls.
 *
 * @param db    how far; empty = as is usual for where the calls go
 * @param range how much of it
 */
public record DipWish(OptionalDouble db, Dipping.Range range) {
    public static final DipWish USUAL =
            new DipWish(OptionalDouble.empty(), Levels.EVEN.dip().range());

    /** What that comes to for calls that go somewhere. */
    public Dipping on(CallsGo go) {
        return new Dipping(db.orElse(go.usualDipDb()), range);
    }
}

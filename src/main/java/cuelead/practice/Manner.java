package cuelead.practice;

import cuelead.plan.CallSettings;
import cuelead.sound.Levels;

/**
 * How a practice is played: everything that can be changed while it plays.
 *
 * @param ground how the dance lies over the music
 * @param calls  what is called and how early, where music is at its own speed
 * @param click  whether a click is heard over music
 * @param levels how loud each part is
 */
record Manner(Ground ground, CallSettings calls, Wish.Click click, Levels levels) {
    Manner with(Ground other) {
        return new Manner(other, calls, click, levels);
    }

    Manner with(CallSettings other) {
        return new Manner(ground, other, click, levels);
    }

    Manner with(Wish.Click other) {
        return new Manner(ground, calls, other, levels);
    }

    Manner with(Levels other) {
        return new Manner(ground, calls, click, other);
    }
}

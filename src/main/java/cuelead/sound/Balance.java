package cuelead.sound;

import java.util.OptionalDouble;

/**
 * Chooses the levels of a mix: every call (but for a few in a hundred) stands clear of the dipped music, the
 * clicks sound as loud as the calls, and the whole has the usual programme loudness. It works on a
 * {@link LoudnessForecast}, so it takes milliseconds.
 */
public final class Balance {
    /** Programme loudness of a balanced mix. */
    public static final double PROGRAMME_LUFS = -16;

    private static final double VOICE_ABOVE_MUSIC_LU = 10;
    /** The forecast knows the music in steps of 100 ms only, so it aims a little beyond what is asked. */
    private static final double MARGIN_LU = 0.7;

    private static final double SHARE_OF_CALLS = 0.97;
    private static final double CLICK_BELOW_VOICE_LU = 2;
    private static final double CLOSE_ENOUGH_LU = 0.01;
    private static final int MOST_ROUNDS = 8;

    private Balance() {}

    /**
     * The levels of a plan's mix.
     *
     * @param plan        its own levels are the user's wishes: what each part shall be louder or softer than
     *                    balanced, and the dip over which the calls stand clear ({@link Levels#EVEN} for no wishes)
     * @param musicPowers see {@link LoudnessForecast}
     */
    public static Levels of(MixPlan plan, MusicPowers musicPowers) {
        LoudnessForecast forecast = new LoudnessForecast(plan, musicPowers);
        return toProgrammeLoudness(clear(plan.levels(), forecast), forecast);
    }

    /**
     * The levels of a plan's mix with another dip and sides: calls, clicks and undipped music are as loud beside each
     * other as with the plan's own, and the whole has its usual loudness.
     */
    public static Levels of(MixPlan plan, MusicPowers musicPowers, Dipping dip, Sides sides) {
        Levels clear = clear(plan.levels(), new LoudnessForecast(plan, musicPowers))
                .with(dip)
                .with(sides);
        return toProgrammeLoudness(clear, new LoudnessForecast(plan.withLevels(clear), musicPowers));
    }

    private static Levels clear(Levels wishes, LoudnessForecast forecast) {
        double voiceDb = voiceDb(forecast, wishes);
        double voiceLufs =
                voiceDb + forecast.voiceLufs().orElse(forecast.musicLufs().orElse(PROGRAMME_LUFS));
        double clickDb = voiceLufs - CLICK_BELOW_VOICE_LU - forecast.clickLufs();
        return new Levels(
                wishes.musicDb(), voiceDb + wishes.voiceDb(), clickDb + wishes.clickDb(), wishes.dip(), wishes.sides());
    }

    /** Gain of the calls where that of the music is 0 dB. */
    private static double voiceDb(LoudnessForecast forecast, Levels wishes) {
        Levels even = new Levels(0, 0, 0, wishes.dip(), Sides.BOTH);
        OptionalDouble above = forecast.voiceAboveMusicLu(even, SHARE_OF_CALLS);
        OptionalDouble music = forecast.musicLufs();
        if (above.isEmpty() || music.isEmpty()) {
            return 0;
        }
        // where all calls fall on silence they still shall be as loud as the song
        double asLoudAsMusic = music.getAsDouble() - forecast.voiceLufs().orElseThrow();
        return Math.max(VOICE_ABOVE_MUSIC_LU + MARGIN_LU - above.getAsDouble(), asLoudAsMusic);
    }

    /** The gates make loudness follow the levels not quite evenly, so this takes a few rounds. */
    private static Levels toProgrammeLoudness(Levels levels, LoudnessForecast forecast) {
        Levels scaled = levels;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            OptionalDouble lufs = forecast.programmeLufs(scaled);
            if (lufs.isEmpty()) {
                return scaled;
            }
            double missing = PROGRAMME_LUFS - lufs.getAsDouble();
            scaled = scaled.louderBy(missing);
            if (Math.abs(missing) < CLOSE_ENOUGH_LU) {
                return scaled;
            }
        }
        return scaled;
    }
}

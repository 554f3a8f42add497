package cuelead.compose;

/** What one player does in one line of the form. */
sealed interface Role {
    Player player();

    /** Plays a written tune, moved by octaves. */
    record Tune(Player player, String voice, int octaves) implements Role {}

    /** Plays under or over a written tune in thirds and sixths that fit the chords. */
    record Harmony(Player player, String voice, Side side) implements Role {}

    /** Plays a bass line over the chords. */
    record Bass(Player player, BassStyle style) implements Role {}

    /** Plays the chords. */
    record Comp(Player player, CompStyle style) implements Role {}

    /** On which side of the tune a harmony lies. */
    enum Side {
        BELOW,
        ABOVE
    }
}

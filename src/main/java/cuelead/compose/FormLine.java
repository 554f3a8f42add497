package cuelead.compose;

import java.util.List;
import java.util.Optional;

/**
 * One line of the form: a passage, and how the band plays it this time.
 *
 * @param levelFrom loudness at its beginning, 100 = full
 * @param levelTo   loudness at its end
 * @param push      how much faster than the song's tempo, 0.01 = 1 %
 * @param fill      what the drums play in its last bars instead
 * @param opening   what its first beat gets on top
 */
record FormLine(
        Passage passage,
        int levelFrom,
        int levelTo,
        double push,
        Optional<DrumPattern> drums,
        Optional<DrumPattern> fill,
        Opening opening,
        List<Role> roles) {
    /** What the first beat gets on top of the pattern. */
    enum Opening {
        PLAIN,
        CRASH
    }

    FormLine {
        roles = List.copyOf(roles);
    }
}

package cuelead.dance;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the head of a sheet states; everything may be missing.
 *
 * @param title        the dance's name; empty when the sheet has none
 * @param metre        eights or waltz sixes
 * @param statedCounts the claimed length in counts
 * @param statedWalls  the claimed number of walls (0 = phrased)
 * @param level        as written, may be empty
 * @param statedTempo  beats a minute
 * @param song         the song's path as written, may be empty
 * @param countOne     where the dance begins; empty = not said
 * @param leadBeats    how early calls come, in beats
 * @param countRate    counts a beat of the song
 * @param startWeight  where the weight is before count 1
 */
public record Header(
        String title,
        Metre metre,
        OptionalInt statedCounts,
        OptionalInt statedWalls,
        String level,
        OptionalDouble statedTempo,
        String song,
        Optional<CountOne> countOne,
        OptionalDouble leadBeats,
        CountRate countRate,
        Weight startWeight) {
    Header beginning(CountOne other) {
        return new Header(
                title,
                metre,
                statedCounts,
                statedWalls,
                level,
                statedTempo,
                song,
                Optional.of(other),
                leadBeats,
                countRate,
                startWeight);
    }
}

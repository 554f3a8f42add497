package cuelead.song;

import java.util.ArrayList;
import java.util.List;

/** Moves the numbers of beats along their row: the beats stay, which of them is 1 changes. */
final class CountShift {
    private CountShift() {}

    /** Every number so many beats later. */
    static List<GridBeat> by(int beatsLater, List<GridBeat> beats) {
        int bar = GridBeat.highest(beats, GridBeat::inBar);
        int phrase = GridBeat.highest(beats, GridBeat::inPhrase);
        List<GridBeat> shifted = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            int from = Math.max(0, Math.min(beats.size() - 1, i - beatsLater));
            int beyond = i - beatsLater - from;
            GridBeat source = beats.get(from);
            shifted.add(new GridBeat(
                    beats.get(i).seconds(),
                    moved(source.inBar(), beyond, bar),
                    moved(source.inPhrase(), beyond, phrase)));
        }
        return shifted;
    }

    /** The beat next to a time becomes 1 of its bar and of its phrase; the numbers go the shorter way there. */
    static List<GridBeat> oneAt(double seconds, List<GridBeat> beats) {
        int nearest = 0;
        for (int i = 1; i < beats.size(); i++) {
            if (Math.abs(beats.get(i).seconds() - seconds)
                    < Math.abs(beats.get(nearest).seconds() - seconds)) {
                nearest = i;
            }
        }
        int phrase = GridBeat.highest(beats, GridBeat::inPhrase);
        int cycle = phrase > 0 ? phrase : GridBeat.highest(beats, GridBeat::inBar);
        int number =
                phrase > 0 ? beats.get(nearest).inPhrase() : beats.get(nearest).inBar();
        int later = Math.floorMod(number - 1, cycle);
        return by(later > cycle / 2 ? later - cycle : later, beats);
    }

    /** A number so many beats on, counted round; 0 stays 0. */
    static int moved(int number, int beats, int cycle) {
        return number == 0 || cycle == 0 ? number : Math.floorMod(number - 1 + beats, cycle) + 1;
    }
}

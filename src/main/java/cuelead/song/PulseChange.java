package cuelead.song;

import java.util.ArrayList;
import java.util.List;

/** Puts other beats in the place of those that are there: between them, more of them, fewer of them. */
final class PulseChange {
    private PulseChange() {}

    /** Every beat moves to the middle between itself and the next; it keeps its number. */
    static List<GridBeat> halfABeatLater(List<GridBeat> beats) {
        List<GridBeat> moved = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            GridBeat beat = beats.get(i);
            moved.add(new GridBeat(secondsAt(i + 0.5, beats), beat.inBar(), beat.inPhrase()));
        }
        return moved;
    }

    static List<GridBeat> twice(List<GridBeat> beats) {
        return every(0.5, beats);
    }

    static List<GridBeat> half(List<GridBeat> beats) {
        return every(2, beats);
    }

    static List<GridBeat> twoForThree(List<GridBeat> beats) {
        return every(1.5, beats);
    }

    static List<GridBeat> threeForTwo(List<GridBeat> beats) {
        return every(2.0 / 3, beats);
    }

    /** A beat each so many old ones. The first old 1 stays a 1, and from it all are numbered anew. */
    private static List<GridBeat> every(double step, List<GridBeat> beats) {
        int one = firstOne(beats);
        int bar = GridBeat.highest(beats, GridBeat::inBar);
        int phrase = GridBeat.highest(beats, GridBeat::inPhrase);
        int before = (int) Math.floor(one / step);
        List<GridBeat> made = new ArrayList<>();
        for (int i = -before; one + i * step <= beats.size() - 1 + 1e-9; i++) {
            int inBar = CountShift.moved(1, i, bar);
            made.add(new GridBeat(
                    secondsAt(one + i * step, beats), inBar, phrase == 0 ? 0 : CountShift.moved(1, i, phrase)));
        }
        return made;
    }

    private static int firstOne(List<GridBeat> beats) {
        int phrase = GridBeat.highest(beats, GridBeat::inPhrase);
        for (int i = 0; i < beats.size(); i++) {
            if (phrase > 0 ? beats.get(i).inPhrase() == 1 : beats.get(i).inBar() == 1) {
                return i;
            }
        }
        return 0;
    }

    /** Between beats time runs evenly; beyond the last as before it. */
    private static double secondsAt(double index, List<GridBeat> beats) {
        int i = (int) Math.min(beats.size() - 2, Math.floor(index));
        double from = beats.get(i).seconds();
        return from + (index - i) * (beats.get(i + 1).seconds() - from);
    }
}

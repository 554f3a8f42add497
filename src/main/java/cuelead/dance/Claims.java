package cuelead.dance;

import java.util.List;

/**
 * What a sheet claims about its dance and where it says so, for the checker. Lines are 1-based, 0 = not claimed.
 *
 * @param clockMarks in the order of the sheet
 * @param doubts     lines that could not be read whole, in the order of the sheet
 * @param countsLine where the length in counts is stated
 * @param wallsLine  where the number of walls is stated
 * @param weightLine where the starting weight is stated
 * @param walls   where they are said to face as walls begin and end
 * @param endings    where the dancers are said to face at the end
 * @param lengths lengths in counts that are stated of the parts of a phrased dance
 */
public record Claims(
        List<ClockMark> clockMarks,
        List<Doubt> doubts,
        int countsLine,
        int wallsLine,
        int weightLine,
        List<EndingClaim> endings,
        List<WallClaim> walls,
        List<PartLength> lengths) {
    public static final Claims NONE = new Claims(List.of(), List.of(), 0, 0, 0, List.of(), List.of(), List.of());

    /** The length that a sheet states of a part, by its letter. */
    public record PartLength(String part, int counts, int line) {}

    public Claims(List<ClockMark> clockMarks, List<Doubt> doubts, int countsLine, int wallsLine, int weightLine) {
        this(clockMarks, doubts, countsLine, wallsLine, weightLine, List.of(), List.of(), List.of());
    }

    public Claims {
        clockMarks = List.copyOf(clockMarks);
        doubts = List.copyOf(doubts);
        walls = List.copyOf(walls);
        endings = List.copyOf(endings);
        lengths = List.copyOf(lengths);
    }

    Claims withMarks(List<ClockMark> marks) {
        return new Claims(marks, doubts, countsLine, wallsLine, weightLine, endings, walls, lengths);
    }

    Claims withDoubts(List<Doubt> others) {
        return new Claims(clockMarks, others, countsLine, wallsLine, weightLine, endings, walls, lengths);
    }
}

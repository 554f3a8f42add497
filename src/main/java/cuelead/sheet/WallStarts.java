package cuelead.sheet;

import cuelead.dance.WallClaim;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Where a line says that walls begin: "Wall 2 starts facing 9:00", "Facing 6:00 to begin the second wall", "Wall 1 faces
 * 12:00, wall 2 9:00, wall 3 6:00".
 */
final class WallStarts {
    private static final Set<String> BEGIN = Set.of(
            "start",
            "starts",
            "starting",
            "begin",
            "begins",
            "beginning",
            "commence",
            "commences",
            "face",
            "faces",
            "facing");
    /** What else a line may say of a wall. */
    private static final Set<String> OTHERWISE = Set.of(
            "after",
            "end",
            "ends",
            "ending",
            "finish",
            "finishes",
            "last",
            "final",
            "count",
            "counts",
            "until",
            "during",
            "section",
            "add",
            "restart",
            "restarts",
            "tag",
            "bridge");

    private WallStarts() {}

    /** One claim a wall; none where walls and facings do not go in pairs, or the line tells something else of them. */
    static List<WallClaim> in(SheetLine line) {
        WallNote note = WallNote.read(line.tokens());
        int said = SaidFacing.in(line.tokens()).size();
        boolean pairs = said > 0 && note.walls().size() == said;
        if (!pairs || !says(line, BEGIN) || says(line, OTHERWISE)) {
            return List.of();
        }
        List<WallClaim> claims = new ArrayList<>();
        for (int i = 0; i < said; i++) {
            claims.add(new WallClaim(
                    note.walls().get(i),
                    WallClaim.Moment.BEGINNING,
                    SaidFacing.in(line.tokens()).get(i).facing(),
                    line.number()));
        }
        return claims;
    }

    private static boolean says(SheetLine line, Set<String> words) {
        return line.tokens().stream().anyMatch(token -> token.is(Token.Kind.WORD) && words.contains(token.text()));
    }
}

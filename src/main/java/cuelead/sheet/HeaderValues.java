package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Names of facts on lines of their own with their values below them: "Count:", "32", "Intro", "16 counts". */
final class HeaderValues {
    private static final Pattern NAME = Pattern.compile(
            "\\W*(?:counts?|(?:number of )?walls?|level|intro(?:duction)?|choreograph(?:er|ers|ed by|y)|choreo|music|song"
                    + "|artist|track|tempo|bpm|starting weight|weight|rhythm|type|motion)\\s*[:=-]?\\s*",
            Pattern.CASE_INSENSITIVE);

    private HeaderValues() {}

    /** The same lines, each name with its value behind it. */
    static List<SheetLine> joined(List<SheetLine> lines) {
        List<SheetLine> joined = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            SheetLine line = lines.get(i);
            boolean named =
                    i > 0 && !OwnLines.isOwn(line) && NAME.matcher(line.text()).matches();
            boolean value = i + 1 < lines.size()
                    && !lines.get(i + 1).isBlank()
                    && !NAME.matcher(lines.get(i + 1).text()).matches();
            joined.add(named && value ? line.and(lines.get(++i)) : line);
        }
        return joined;
    }
}

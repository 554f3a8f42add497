package cuelead.cli;

import cuelead.dance.CountOne;
import cuelead.dance.Dance;
import cuelead.dance.DanceRow;
import cuelead.dance.Ending;
import cuelead.dance.Foot;
import cuelead.dance.Header;
import cuelead.dance.Metre;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Tag;
import cuelead.dance.Turn;
import cuelead.dance.Weight;
import cuelead.steer.Told;
import java.util.ArrayList;
import java.util.List;

/**
 * A dance for other programs: lines {@code #key=value} of what holds for the whole dance, a line of column names, then
 * a line an action. Words are those of the figure table; degrees are right of the front wall, or of the turn, below 0
 * to the left.
 */
final class ReadTsv {
    private static final List<String> COLUMNS = List.of(
            "section",
            "count_in_dance",
            "label",
            "foot",
            "action",
            "direction",
            "turn_deg",
            "facing_deg",
            "facing_clock",
            "weight_before",
            "weight_after",
            "transfer",
            "figure");

    private final Dance dance;
    private final StringBuilder text = new StringBuilder();

    private ReadTsv(Dance dance) {
        this.dance = dance;
    }

    static String of(Dance dance) {
        ReadTsv tsv = new ReadTsv(dance);
        tsv.head();
        tsv.dance();
        tsv.changes();
        tsv.text.append(Tsv.line(COLUMNS));
        DanceRow.of(dance).forEach(row -> tsv.text.append(line(row)));
        return tsv.text.toString();
    }

    private void head() {
        Header header = dance.header();
        fact("title", header.title());
        fact("level", header.level());
        fact("meter", header.metre() == Metre.SIXES ? "3/4" : "4/4");
        header.statedTempo().ifPresent(tempo -> fact("bpm", Told.decimal(tempo)));
        header.countOne().ifPresent(this::countOne);
        header.statedCounts().ifPresent(counts -> fact("counts_claimed", String.valueOf(counts)));
        header.statedWalls().ifPresent(walls -> fact("walls_claimed", String.valueOf(walls)));
    }

    private void countOne(CountOne where) {
        if (where instanceof CountOne.Intro intro) {
            fact("intro_counts", String.valueOf(intro.counts()));
        } else if (where instanceof CountOne.AtSeconds at) {
            fact("count_one_seconds", Told.decimal(at.songSeconds()));
        }
    }

    private void dance() {
        fact("counts", String.valueOf(dance.counts()));
        fact("start_weight", dance.header().startWeight().letter());
        if (dance.isPhrased()) {
            fact("sequence", String.join(" ", dance.sequence()));
            dance.parts().forEach(part -> fact("net_" + part.name(), net(part)));
            return;
        }
        Part part = dance.parts().get(0);
        Turn turn = part.netTurn();
        fact("end_weight", endWeight().letter());
        fact("net_turn_deg", String.valueOf(turn.degrees()));
        fact("net_turn_mod360", net(part));
        fact("walls", String.valueOf(turn.walls()));
    }

    private static String net(Part part) {
        return String.valueOf(Math.floorMod(part.netTurn().degrees(), 360));
    }

    private Weight endWeight() {
        return DanceRow.of(dance).stream()
                .filter(row -> dance.parts().get(0).sections().contains(row.section()))
                .reduce((first, second) -> second)
                .map(row -> row.step().weightAfter())
                .orElse(dance.header().startWeight());
    }

    private void changes() {
        List<String> restarts = new ArrayList<>();
        for (Restart restart : dance.restarts()) {
            restarts.add("wall " + restart.wall() + " after count " + restart.afterCount());
        }
        fact("restarts", restarts.isEmpty() ? "none" : String.join("; ", restarts));
        List<String> tags = new ArrayList<>();
        for (Tag tag : dance.tags()) {
            String walls = String.join(
                    ", ", tag.afterWalls().stream().map(String::valueOf).toList());
            tags.add(tag.part().counts() + " counts" + (walls.isEmpty() ? "" : " after wall " + walls));
        }
        fact("tags", tags.isEmpty() ? "none" : String.join("; ", tags));
        fact("ending", dance.ending().map(Ending::words).orElse("none"));
    }

    private void fact(String key, String value) {
        text.append('#')
                .append(key)
                .append('=')
                .append(value.replaceAll("\\s+", " ").strip())
                .append('\n');
    }

    private static String line(DanceRow row) {
        return Tsv.line(List.of(
                row.section().name(),
                Told.decimal(row.countInDance()),
                row.step().count().label(),
                row.step().foot().map(Foot::letter).orElse("-"),
                row.step().action().word(),
                row.step().direction().word(),
                String.valueOf(row.step().turn().degrees()),
                String.valueOf(row.facing().degrees()),
                row.facing().clock(),
                row.weightBefore().letter(),
                row.step().weightAfter().letter(),
                row.step().transfer().letter(),
                row.figure().map(run -> run.figure().id()).orElse("")));
    }
}

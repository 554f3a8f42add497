package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** One invented dance of 32 counts, of which the layouts differ only in where counts, steps and headings stand. */
final class OneDance {
    static final String HEAD = """
            Nettle Row
            Choreographer: Quill Underhay
            32 counts, 4 walls, beginner
            Intro: 16 counts, weight on L

            """;
    static final String FOOT = "\nBegin again\n";
    private static final List<String> WORDS =
            List.of("", "one", "two", "three", "four", "five", "six", "seven", "eight");

    private OneDance() {}

    /** Counts and their steps; {@code figure} says the same in fewer words. */
    record Group(String counts, String steps, String figure) {
        int first() {
            return counts.charAt(0) - '0';
        }

        int last() {
            return counts.charAt(counts.length() - 1) - '0';
        }

        int length() {
            return last() - first() + 1;
        }

        boolean isSplit() {
            return counts.indexOf('&') >= 0;
        }

        /** "1, 2, 3, 4" with this joint and this sign between halves. */
        String listed(String joint, String and, UnaryOperator<String> number) {
            List<String> all = new ArrayList<>();
            for (int count = first(); count <= last(); count++) {
                all.add(number.apply(String.valueOf(count)));
            }
            return String.join(isSplit() ? and : joint, all);
        }

        /** One step a row: its count or "&amp;", and its words. */
        List<List<String>> rows() {
            List<List<String>> rows = new ArrayList<>();
            String[] each = steps.split(", ", -1);
            for (int i = 0; i < each.length; i++) {
                int count = first() + (isSplit() ? (i + 1) / 2 : i);
                rows.add(List.of(isSplit() && i == 1 ? "&" : String.valueOf(count), capital(each[i])));
            }
            return rows;
        }

        /** Its rows with this before, between and behind each. */
        String rows(String before, String between, String behind) {
            StringBuilder lines = new StringBuilder();
            rows().forEach(row -> lines.append(before)
                    .append(row.get(0))
                    .append(between)
                    .append(row.get(1))
                    .append(behind));
            return lines.toString();
        }

        /** Counted through the whole dance: "9-10" in the second eight. */
        Group counted(int eight) {
            return new Group((first() + 8 * eight) + (isSplit() ? "&" : "-") + (last() + 8 * eight), steps, figure);
        }
    }

    record Eight(String heading, List<Group> groups) {}

    static final List<Eight> EIGHTS = List.of(
            new Eight(
                    "VINE RIGHT, VINE LEFT",
                    List.of(
                            new Group(
                                    "1-4",
                                    "Step R to side, step L behind R, step R to side, touch L beside R",
                                    "vine right and touch L"),
                            new Group(
                                    "5-8",
                                    "Step L to side, step R behind L, step L to side, touch R beside L",
                                    "vine left and touch R"))),
            new Eight(
                    "ROCK, SHUFFLE, ROCK, SHUFFLE",
                    List.of(
                            new Group("1-2", "Rock R forward, recover L", "rock R forward, recover L"),
                            new Group("3&4", "Step R back, step L beside R, step R back", "shuffle back R"),
                            new Group("5-6", "Rock L back, recover R", "rock L back, recover R"),
                            new Group("7&8", "Step L forward, step R beside L, step L forward", "shuffle forward L"))),
            new Eight(
                    "ROCKING CHAIR, PIVOT TURNS",
                    List.of(
                            new Group("1-4", "Rock R forward, recover L, rock R back, recover L", "rocking chair R"),
                            new Group("5-6", "Step R forward, pivot 1/2 L", "step R forward, pivot 1/2 L"),
                            new Group("7-8", "Step R forward, pivot 1/4 L", "step R forward, pivot 1/4 L"))),
            new Eight(
                    "JAZZ BOX, SIDE TOUCHES",
                    List.of(
                            new Group(
                                    "1-4",
                                    "Cross R over L, step L back, step R to side, step L beside R",
                                    "jazz box R"),
                            new Group("5-6", "Step R to side, touch L beside R", "step R to side, touch L beside R"),
                            new Group("7-8", "Step L to side, touch R beside L", "step L to side, touch R beside L"))));

    static String numbered(Eight eight, int index) {
        return "Section " + (index + 1) + ": " + eight.heading() + "\n";
    }

    static String worded(Eight eight, int index) {
        return eight.heading() + "\n";
    }

    /** No heading at all. */
    static String bare(Eight eight, int index) {
        return "";
    }

    /** The plain layout, with which all others are compared. */
    static String plain() {
        return sections(
                (eight, number) -> "[" + (number * 8 + 1) + "-" + (number * 8 + 8) + "] " + eight.heading() + "\n",
                group -> group.counts() + " " + group.steps() + "\n");
    }

    /** All eights, each with this heading above it and these lines. */
    static String sections(BiFunction<Eight, Integer, String> heading, Function<Group, String> line) {
        StringBuilder text = new StringBuilder(HEAD);
        for (int i = 0; i < EIGHTS.size(); i++) {
            text.append(heading.apply(EIGHTS.get(i), i));
            EIGHTS.get(i).groups().forEach(group -> text.append(line.apply(group)));
            text.append("\n");
        }
        return text.append(FOOT).toString();
    }

    /** Counted on from eight to eight. */
    static String runningOn(BiFunction<Eight, Integer, String> heading, Function<Group, String> line) {
        StringBuilder text = new StringBuilder(HEAD);
        for (int i = 0; i < EIGHTS.size(); i++) {
            int eight = i;
            text.append(heading.apply(EIGHTS.get(i), i));
            EIGHTS.get(i).groups().forEach(group -> text.append(line.apply(group.counted(eight))));
            text.append("\n");
        }
        return text.append(FOOT).toString();
    }

    static String word(String digit) {
        return WORDS.get(Integer.parseInt(digit));
    }

    static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}

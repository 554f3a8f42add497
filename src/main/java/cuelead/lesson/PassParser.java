package cuelead.lesson;

import cuelead.dance.Dance;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings.Fading;
import cuelead.time.Tempo;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Parses one line of a lesson: what first, then the other fields in any order, parted by commas. */
final class PassParser {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,4}(?:\\.\\d{1,20})?");
    private static final Pattern TIMES = Pattern.compile("(\\d{1,4})\\s*(?:times|x)");
    private static final Pattern SHARE = Pattern.compile("(" + NUMBER + ")\\s*%");
    private static final Pattern BEATS = Pattern.compile("(" + NUMBER + ")\\s*bpm");
    private static final Pattern CALLS = Pattern.compile("calls(?:\\s+(?<level>\\p{L}+?))??(?<fading>\\s+fading)?");
    private static final double SLOWEST_BPM = 20;
    private static final double FASTEST_BPM = 400;
    private static final String FIELDS =
            "Behind the piece stand a pace (walk, steady, full, 72 %, 96 bpm), how often (3 times), clicks or music,"
                    + " and calls (calls figures).";

    private final PieceParser pieces;

    PassParser(Dance dance) {
        pieces = new PieceParser(dance);
    }

    /** A field of the line being parsed. */
    private record Field(String text, int column) {}

    Pass parse(String line) throws LessonMistake {
        int end = line.indexOf(',');
        Field what = field(line, 0, end < 0 ? line.length() : end);
        Pass pass = new Pass(pieces.parse(what.text(), what.column()), Pace.FULL, 1, Pass.Over.CLICKS);
        while (end >= 0) {
            int from = end + 1;
            end = line.indexOf(',', from);
            pass = with(pass, field(line, from, end < 0 ? line.length() : end));
        }
        return pass;
    }

    private static Field field(String line, int from, int to) {
        String text = line.substring(from, to);
        int blanks = text.length() - text.stripLeading().length();
        return new Field(
                text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " "),
                from + (text.isBlank() ? 0 : blanks) + 1);
    }

    private static Pass with(Pass pass, Field field) throws LessonMistake {
        Optional<Pace> pace = pace(field);
        Matcher times = TIMES.matcher(field.text());
        Matcher calls = CALLS.matcher(field.text());
        if (pace.isPresent()) {
            return pass.at(pace.get());
        } else if (field.text().equals("once") || field.text().equals("twice")) {
            return times(pass, field.text().equals("once") ? 1 : 2);
        } else if (times.matches()) {
            return times(pass, checkedTimes(times.group(1), field));
        } else if (field.text().equals("clicks") || field.text().equals("music")) {
            Pass.Over over = field.text().equals("music") ? Pass.Over.MUSIC : Pass.Over.CLICKS;
            return new Pass(pass.piece(), pass.pace(), pass.times(), over, pass.level(), pass.fading());
        } else if (calls.matches()) {
            Fading fading = calls.group("fading") == null ? Fading.STEADY : Fading.WALL_BY_WALL;
            return new Pass(
                    pass.piece(), pass.pace(), pass.times(), pass.over(), level(calls.group("level"), field), fading);
        }
        throw new LessonMistake(field.column(), "\"" + field.text() + "\" is not understood.", FIELDS);
    }

    private static Pass times(Pass pass, int times) {
        return new Pass(pass.piece(), pass.pace(), times, pass.over(), pass.level(), pass.fading());
    }

    private static int checkedTimes(String digits, Field field) throws LessonMistake {
        int times = Integer.parseInt(digits);
        if (times < 1 || times > Pass.MOST_TIMES) {
            throw new LessonMistake(
                    field.column(),
                    "A pass goes 1 to " + Pass.MOST_TIMES + " times, not " + digits + ".",
                    "Write the line again for more.");
        }
        return times;
    }

    private static Optional<Pace> pace(Field field) throws LessonMistake {
        Optional<PaceName> name = PaceName.of(field.text());
        if (name.isPresent()) {
            return Optional.of(name.get().pace());
        }
        Matcher share = SHARE.matcher(field.text());
        if (share.matches()) {
            double ofFull = new BigDecimal(share.group(1)).movePointLeft(2).doubleValue();
            check(ofFull, Pace.Share.LEAST, Pace.Share.MOST, field, "A share of full speed is 40 to 125 %");
            return Optional.of(new Pace.Share(ofFull));
        }
        Matcher beats = BEATS.matcher(field.text());
        if (beats.matches()) {
            double tempo = Double.parseDouble(beats.group(1));
            check(tempo, SLOWEST_BPM, FASTEST_BPM, field, "A tempo is 20 to 400 beats a minute");
            return Optional.of(new Pace.Beats(new Tempo(tempo)));
        }
        return Optional.empty();
    }

    private static void check(double value, double least, double most, Field field, String range) throws LessonMistake {
        if (value < least || value > most) {
            throw new LessonMistake(
                    field.column(), range + ", not " + field.text() + ".", "Write walk, steady or full.");
        }
    }

    private static CallLevel level(String word, Field field) throws LessonMistake {
        if (word == null) {
            return CallLevel.WORDS;
        }
        for (CallLevel level : CallLevel.values()) {
            if (level.word().equals(word)) {
                return level;
            }
        }
        throw new LessonMistake(
                field.column(),
                "\"" + word + "\" is no call level.",
                "Write calls words, figures, sections, changes or none.");
    }
}

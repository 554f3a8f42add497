package cuelead.voice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text file {@code marks.txt} beside recorded words, UTF-8, one recording a line: {@code rock.wav = 0.842 of 1.930},
 * which is felt 0.842 seconds after the beginning of a file that is 1.930 seconds long; {@code by ear} behind it keeps
 * Cuelead from setting it anew. {@code #} begins a line of comment.
 */
public final class MarkFile {
    /** Its name in the folder of recordings. */
    public static final String NAME = "marks.txt";

    private static final String NUMBER = "(\\d{1,4}(?:\\.\\d{1,6})?)";
    private static final Pattern VALUE =
            Pattern.compile("\\s*" + NUMBER + "\\s+of\\s+" + NUMBER + "(\\s+by\\s+ear)?\\s*");
    private static final List<String> HEAD = List.of(
            "# Where recorded words are felt, in seconds from the beginning of their file.",
            "# rock.wav = 0.842 of 1.930    0.842 is the mark, 1.930 the length of the file.",
            "# With \"by ear\" behind it Cuelead leaves a mark as it is.");

    private MarkFile() {}

    /** What was read, and the mistakes in it; a line with a mistake counts as missing. */
    public record Read(Map<String, Mark> marks, List<Problem> problems) {
        public Read {
            marks = Map.copyOf(marks);
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads the marks of a folder; none where there is no such file yet.
     *
     * @throws Refused when the file cannot be read at all
     */
    public static Read read(Path folder) throws Refused {
        Path file = folder.resolve(NAME);
        if (Files.notExists(file)) {
            return new Read(Map.of(), List.of());
        }
        try {
            return of(file.toString(), Files.readString(file, StandardCharsets.UTF_8));
        } catch (CharacterCodingException otherEncoding) {
            throw new Refused("The marks in " + file + " are no UTF-8 text: save the file as UTF-8.", otherEncoding);
        } catch (IOException unreadable) {
            throw new Refused("The file of marks " + file + " cannot be read: check that you may read it.", unreadable);
        }
    }

    static Read of(String fileName, String text) {
        Map<String, Mark> marks = new TreeMap<>();
        List<Problem> problems = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).startsWith("\ufeff") ? lines.get(i).substring(1) : lines.get(i);
            if (!line.isBlank() && !line.stripLeading().startsWith("#")) {
                line(new Place(fileName, i + 1, problems), line, marks);
            }
        }
        return new Read(marks, problems);
    }

    private record Place(String file, int line, List<Problem> problems) {
        void mistake(int column, String sentence, String tryThis) {
            problems.add(new Problem(Problem.Severity.WARNING, "mark", file, line, column, sentence, tryThis));
        }
    }

    private static void line(Place place, String line, Map<String, Mark> marks) {
        int equals = line.lastIndexOf('='); // a file's name may hold others
        if (equals < 0) {
            place.mistake(1, "There is no \"=\" in this line.", "Write \"rock.wav = 0.842 of 1.930\".");
            return;
        }
        String name = line.substring(0, equals).strip();
        Matcher value = VALUE.matcher(line.substring(equals + 1));
        if (name.isEmpty()) {
            place.mistake(1, "No file stands before the \"=\".", "Write the name of the recording there.");
        } else if (!value.matches()) {
            place.mistake(
                    equals + 2,
                    "Behind the \"=\" stands no mark.",
                    "Write the seconds of the mark, \"of\" and the length, such as \"0.842 of 1.930\".");
        } else if (Double.parseDouble(value.group(1)) > Double.parseDouble(value.group(2))) {
            place.mistake(
                    equals + 2 + value.start(1),
                    "The mark lies behind the end of the recording.",
                    "Write a mark between 0 and " + value.group(2) + ".");
        } else if (marks.containsKey(name)) {
            place.mistake(1, "There is a mark of " + name + " above, and that one counts.", "Delete one of the two.");
        } else {
            Mark.By by = value.group(3) == null ? Mark.By.HEARING : Mark.By.EAR;
            marks.put(name, new Mark(Double.parseDouble(value.group(1)), Double.parseDouble(value.group(2)), by));
        }
    }

    /** The text of the file, in the order of the recordings' names. */
    public static String print(Map<String, Mark> marks) {
        StringBuilder text = new StringBuilder();
        HEAD.forEach(line -> text.append(line).append('\n'));
        new TreeMap<>(marks)
                .forEach((name, mark) -> text.append(String.format(
                        Locale.ROOT,
                        "%s = %.4f of %.4f%s\n",
                        name,
                        mark.centreSeconds(),
                        mark.lengthSeconds(),
                        mark.by() == Mark.By.EAR ? " by ear" : "")));
        return text.toString();
    }
}

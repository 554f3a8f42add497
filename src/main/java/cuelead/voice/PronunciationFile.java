package cuelead.voice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.report.UserText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A user's text file of pronunciations, one a line: {@code chasse = sha say}, or for the built-in voice its
 * sounds between slashes, {@code hook = /hh uh1 k/}. {@code #} begins a comment. A line with a mistake counts as
 * missing.
 */
public final class PronunciationFile {
    private final String name;
    private final Map<String, String> inWords = new HashMap<>();
    private final Map<String, List<String>> inSounds = new HashMap<>();
    private final Map<String, Integer> lineOf = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private PronunciationFile(String name) {
        this.name = name;
    }

    /** What was read, and the mistakes in it. */
    public record Read(Pronunciations pronunciations, List<Problem> problems) {}

    /**
     * Reads the file; its mistakes come with what is right in it.
     *
     * @throws Refused when the file cannot be read at all
     */
    public static Read read(Path file) throws Refused {
        return of(file.toString(), UserText.read(file, "The pronunciations"));
    }

    static Read of(String fileName, String text) {
        PronunciationFile file = new PronunciationFile(fileName);
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            file.line(i + 1, lines.get(i));
        }
        return new Read(new Pronunciations(file.inWords, file.inSounds), List.copyOf(file.problems));
    }

    private void line(int number, String whole) {
        int comment = whole.indexOf('#');
        String line = comment < 0 ? whole : whole.substring(0, comment);
        if (line.isBlank()) {
            return;
        }
        int equals = line.indexOf('=');
        if (equals < 0) {
            mistake(number, firstLetter(line, 0), "There is no \"=\" in this line.", "Write \"chasse = sha say\".");
            return;
        }
        Optional<String> word = SpeakableText.of(line.substring(0, equals));
        String said = line.substring(equals + 1).strip();
        if (word.isEmpty()) {
            mistake(
                    number,
                    1,
                    "No word stands before the \"=\".",
                    "Write the word that is to be said otherwise there.");
        } else if (said.isEmpty()) {
            mistake(number, equals + 2, "Nothing stands behind the \"=\".", "Write how the word is to be said there.");
        } else if (lineOf.putIfAbsent(word.get(), number) != null) {
            mistake(
                    number,
                    firstLetter(line, 0),
                    "\"" + word.get() + "\" stands in line " + lineOf.get(word.get())
                            + " already, and that one counts.",
                    "Delete one of the two.");
        } else if (said.startsWith("/")) {
            sounds(number, line, equals + 1, word.get());
        } else {
            words(number, line, equals + 1, word.get());
        }
    }

    private void words(int number, String line, int from, String word) {
        SpeakableText.of(line.substring(from))
                .ifPresentOrElse(
                        said -> inWords.put(word, said),
                        () -> mistake(
                                number,
                                firstLetter(line, from),
                                "Nothing behind the \"=\" can be spoken.",
                                "Write it in English letters."));
    }

    private void sounds(int number, String line, int from, String word) {
        int open = line.indexOf('/', from);
        int close = line.indexOf('/', open + 1);
        if (close < 0) {
            mistake(number, line.length() + 1, "The second \"/\" is missing.", "Write it behind the last sound.");
        } else if (word.contains(" ")) {
            mistake(
                    number,
                    open + 1,
                    "Sounds can be given for single words only.",
                    "Give each word a line of its own.");
        } else {
            List<String> sounds = new ArrayList<>();
            boolean known = true;
            for (int at = firstLetter(line, open + 1) - 1; at < close; ) {
                int end = endOfWord(line, at, close);
                String sound = line.substring(at, end).toLowerCase(Locale.ROOT);
                known &= SpeechSounds.isOne(sound) || unknown(number, at + 1, sound);
                sounds.add(sound);
                at = firstLetter(line, end) - 1;
            }
            keep(number, open + 1, word, sounds, known);
        }
    }

    private void keep(int number, int column, String word, List<String> sounds, boolean known) {
        if (known && sounds.stream().noneMatch(SpeechSounds::isVowel)) {
            mistake(number, column, "There is no vowel among these sounds.", SpeechSounds.LISTED);
        } else if (known) {
            inSounds.put(word, sounds);
        }
    }

    private boolean unknown(int number, int column, String sound) {
        mistake(number, column, "\"" + sound + "\" is no sound of the built-in voice.", SpeechSounds.LISTED);
        return false;
    }

    private static int endOfWord(String line, int from, int most) {
        int end = from;
        while (end < most && !Character.isWhitespace(line.charAt(end))) {
            end++;
        }
        return end;
    }

    /** 1-based column of the first character from an index on that is no space. */
    private static int firstLetter(String line, int from) {
        int at = from;
        while (at < line.length() && Character.isWhitespace(line.charAt(at))) {
            at++;
        }
        return at + 1;
    }

    private void mistake(int line, int column, String sentence, String tryThis) {
        problems.add(new Problem(Problem.Severity.WARNING, "pronunciation", name, line, column, sentence, tryThis));
    }
}

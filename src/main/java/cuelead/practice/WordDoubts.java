package cuelead.practice;

import cuelead.report.Problem;
import cuelead.voice.HardWords;
import cuelead.voice.Pronunciations;
import cuelead.voice.SpeakableText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is told of words that a voice cannot say, or says so that they may not be understood. */
public final class WordDoubts {
    /** The kind of the note on words that the built-in voice says poorly. */
    public static final String HARD_WORD = "hard_word";

    private final String sheet;
    private final Pronunciations users;

    /** @param users how the user wants words to be said */
    WordDoubts(String sheet, Pronunciations users) {
        this.sheet = sheet;
        this.users = users;
    }

    /** @param asked everything that the plan wanted said, whether or not there is a clip of it */
    List<Problem> unsaid(Set<String> asked) {
        List<Problem> problems = new ArrayList<>();
        for (String words : asked) {
            String missing = SpeakableText.unsaid(words);
            boolean nothing = SpeakableText.of(words).isEmpty();
            if (nothing || !missing.isEmpty()) {
                String what = nothing ? "\"" + words + "\"" : "\"" + missing + "\" in \"" + words + "\"";
                problems.add(new Problem(
                        Problem.Severity.WARNING,
                        "word_not_said",
                        sheet,
                        0,
                        0,
                        "The voice cannot say " + what + ", so it is left out.",
                        "Write it in English letters."));
            }
        }
        return problems;
    }

    /** One note for all hard words among those that the built-in voice says. */
    Optional<Problem> hard(Set<String> builtIn) {
        Map<String, List<String>> offers = new LinkedHashMap<>();
        builtIn.forEach(words -> HardWords.offers(words, users).ifPresent(instead -> offers.put(words, instead)));
        if (offers.isEmpty()) {
            return Optional.empty();
        }
        List<String> told = new ArrayList<>();
        offers.forEach((word, instead) -> told.add("\"" + word + "\" (or: " + String.join(", ", instead) + ")"));
        return Optional.of(new Problem(
                Problem.Severity.NOTE,
                HARD_WORD,
                sheet,
                0,
                0,
                "The built-in voice says some words poorly: " + String.join("; ", told) + ".",
                "Record them (--words), or write others in double quotes at the end of their line."));
    }
}

package cuelead.cli;

import cuelead.practice.SpokenCall;
import cuelead.voice.Clip;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** A file name for each distinct word that is spoken: readable, and safe on every system. */
final class ClipNames {
    private static final int LONGEST = 60;
    /** Names that Windows keeps for devices, whatever their ending. */
    private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");

    private final Map<String, String> nameByWords = new LinkedHashMap<>();
    private final Map<String, Clip> clipByName = new LinkedHashMap<>();

    ClipNames(List<SpokenCall> calls) {
        Set<String> taken = new HashSet<>();
        for (SpokenCall call : calls) {
            String words = call.call().words();
            if (!nameByWords.containsKey(words)) {
                String name = free(safe(words), taken) + ".wav";
                nameByWords.put(words, name);
                clipByName.put(name, call.clip());
            }
        }
    }

    /** The file of some words that one of the calls has. */
    String of(String words) {
        return nameByWords.get(words);
    }

    /** The clips by their file names, in the order in which they are first heard. */
    Map<String, Clip> clips() {
        return clipByName;
    }

    /** Lower case; letters and digits of ASCII, anything else becomes one underscore. */
    static String safe(String words) {
        String plain = Normalizer.normalize(words, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "_");
        String trimmed = plain.replaceAll("^_+", "");
        String cut = trimmed.substring(0, Math.min(LONGEST, trimmed.length())).replaceAll("_+$", "");
        if (cut.isEmpty()) {
            return "word";
        }
        return DEVICE.matcher(cut).matches() ? cut + "_" : cut;
    }

    private static String free(String name, Set<String> taken) {
        String free = name;
        for (int number = 2; !taken.add(free); number++) {
            free = name + "_" + number;
        }
        return free;
    }
}

package cuelead.compose;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The {@code key=value} words of a line, and the bare words among them. */
final class Settings {
    private static final int MOST = 127;

    private final Complaints complaints;
    private final Map<String, Word> values = new HashMap<>();

    /** Tells of every key that is not among {@code known}; a bare word counts as a key with an empty value. */
    Settings(Complaints complaints, List<Word> words, List<String> known) {
        this.complaints = complaints;
        for (Word word : words) {
            int equals = word.text().indexOf('=');
            Word key = equals < 0 ? word : word.upTo(equals);
            if (!known.contains(key.text())) {
                complaints.unknown(key, "setting", known);
            } else {
                values.put(key.text(), equals < 0 ? word.from(word.text().length()) : word.from(equals + 1));
            }
        }
    }

    Optional<Word> word(String key) {
        return Optional.ofNullable(values.get(key));
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    /** The comma-separated words of a value. */
    List<Word> words(String key) {
        return word(key).map(value -> value.cutAt(',')).orElse(List.of());
    }

    int whole(String key, int least, int otherwise) {
        return word(key).map(value -> whole(value, least, MOST)).orElse(otherwise);
    }

    /** A whole number, with or without a sign; tells of it and gives {@code least} where it is none. */
    int whole(Word word, int least, int most) {
        if (word.text().matches("[+-]?\\d{1,4}")) {
            int value = Integer.parseInt(word.text());
            if (value >= least && value <= most) {
                return value;
            }
        }
        complaints.at(
                word,
                "bad_number",
                Complaints.quoted(word) + " is not a whole number from " + least + " to " + most + ".",
                "");
        return least;
    }
}

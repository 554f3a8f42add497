package cuelead.lesson;

import cuelead.lesson.LineScanner.Found;
import java.util.Optional;

/** What a line says of one thing. Said twice it would be unclear which is meant. */
final class Once<T> {
    private final String rule;
    private Optional<T> value = Optional.empty();
    private String text = "";
    private int column;

    /** @param rule why it is said once, as "a pass has one pace" */
    Once(String rule) {
        this.rule = rule;
    }

    void say(T said, Found where) throws LessonMistake {
        if (value.isPresent()) {
            throw new LessonMistake(
                    where.column(),
                    "\"" + where.text() + "\" comes after \"" + text + "\", but " + rule + ".",
                    "Keep one of them, or write a line for each.");
        }
        value = Optional.of(said);
        text = where.text();
        column = where.column();
    }

    Optional<T> value() {
        return value;
    }

    /** Where it was said, 1-based; 0 if it was not. */
    int column() {
        return column;
    }
}

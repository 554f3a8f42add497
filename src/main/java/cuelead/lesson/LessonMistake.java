package cuelead.lesson;

/** What is wrong with a line of a lesson, and where. */
final class LessonMistake extends Exception {
    private final int column;
    private final String tryThis;

    /** @param column 1-based */
    LessonMistake(int column, String sentence, String tryThis) {
        super(sentence);
        this.column = column;
        this.tryThis = tryThis;
    }

    int column() {
        return column;
    }

    String sentence() {
        return getMessage();
    }

    String tryThis() {
        return tryThis;
    }
}

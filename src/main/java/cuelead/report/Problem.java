package cuelead.report;

/**
 * A mistake or a doubt at a place in a user's file.
 *
 * @param severity how bad: an error stops the job, a warning does not, a note is for the curious
 * @param kind     short stable name of the kind of finding, such as {@code wrong_clock}, for machines
 * @param file     the file as the user named it
 * @param line     1-based line; 0 when the finding is about the whole file
 * @param column   1-based column in that line; 0 when about the whole line
 * @param sentence what is wrong, in one sentence that begins with a capital letter and ends with a full stop
 * @param tryThis  what to try, in one sentence, or an empty string
 */
public record Problem(
        Severity severity, String kind, String file, int line, int column, String sentence, String tryThis) {
    /** How bad a problem is. */
    public enum Severity {
        ERROR("error"),
        WARNING("warning"),
        NOTE("note");

        private final String word;

        Severity(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** {@code file:line:column: severity: sentence try this}, leaving out what is not known. */
    public String message() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(':').append(line);
            if (column > 0) {
                text.append(':').append(column);
            }
        }
        text.append(": ").append(severity.word()).append(": ").append(sentence);
        if (!tryThis.isEmpty()) {
            text.append(' ').append(tryThis);
        }
        return text.toString();
    }
}

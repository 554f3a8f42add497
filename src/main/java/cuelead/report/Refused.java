package cuelead.report;

/**
 * A thing that the user asked for and that cannot be done. The message is the one whole sentence that the user
 * reads: what, where, and what to try. Mistakes of the program itself are unchecked exceptions instead.
 */
public final class Refused extends Exception {
    public Refused(String sentence) {
        super(sentence);
    }

    public Refused(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}

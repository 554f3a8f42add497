package cuelead.plan;

/**
 * A call that was not made.
 *
 * @param words   what would have been said
 * @param wall    its wall
 * @param section its section, empty before the dance
 * @param count   its count as written
 * @param reason  why: a phrase for "... because REASON"
 */
public record LeftOut(String words, int wall, String section, String count, Reason reason) {
    /** Why a call was left out. */
    public enum Reason {
        NO_ROOM("another call is being said"),
        GIVES_WAY("a section, turn or change is called there instead"),
        SILENT_ON_SHEET("the sheet asks for silence"),
        NOT_SPEAKABLE("the voice cannot say it"),
        BEFORE_THE_MUSIC("the music has not begun"),
        TOO_LATE("it cannot end early enough to be danced");

        private final String phrase;

        Reason(String phrase) {
            this.phrase = phrase;
        }

        public String phrase() {
            return phrase;
        }
    }
}

package cuelead.plan;

/**
 * How a piece of a dance is announced, in place of its wall.
 *
 * @param words what is said
 * @param about what it tells of
 */
public record Title(String words, About about) {
    /** What is danced. */
    public enum About {
        A_PIECE,
        /** A tag, a restart or a change of parts, with what is danced around it. */
        A_CHANGE
    }
}

package cuelead.practice;

/** Is told how far a longer piece of work has come. Called on any thread; must return at once. */
@FunctionalInterface
public interface Progress {
    /** Nobody is told. */
    Progress UNTOLD = (work, done) -> {};

    /**
     * Tells how far it is.
     *
     * @param work what is being done, such as "listening to the song"
     * @param done 0 to 1
     */
    void at(String work, double done);
}

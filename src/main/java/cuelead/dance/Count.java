package cuelead.dance;

/**
 * A count as it is danced and said: {@code 3}, {@code 3&} (half a count after 3), {@code 3a} (three quarters
 * after), numbered from 1 within its section or tag. The pickup {@code &1} is {@code 0&}.
 */
public record Count(int number, Split split) implements Comparable<Count> {
    /** Where in the count: on it, its "and" (half), its "a" (the last quarter, RAL 2001). */
    public enum Split {
        ON("", 0),
        AND("&", Counts.TICKS_PER_COUNT / 2),
        A("a", Counts.TICKS_PER_COUNT * 3 / 4);

        private final String mark;
        private final long ticks;

        Split(String mark, long ticks) {
            this.mark = mark;
            this.ticks = ticks;
        }

        public String mark() {
            return mark;
        }
    }

    public Count {
        if (number < 0) {
            throw new IllegalArgumentException("count below 0: " + number);
        }
    }

    public static Count on(int number) {
        return new Count(number, Split.ON);
    }

    public static Count and(int number) {
        return new Count(number, Split.AND);
    }

    public boolean isWhole() {
        return split == Split.ON;
    }

    /** Length from the section's first count to this one; count 1 is at zero. */
    public Counts offset() {
        return new Counts((number - 1) * Counts.TICKS_PER_COUNT + split.ticks);
    }

    /** As written: {@code 3}, {@code 3&}, {@code 3a}. */
    public String label() {
        return number + split.mark();
    }

    @Override
    public int compareTo(Count other) {
        return offset().compareTo(other.offset());
    }
}

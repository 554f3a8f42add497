package cuelead.cli;

import cuelead.lesson.Lesson;
import cuelead.report.Refused;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Which passes of a lesson are wanted.
 *
 * @param numbers from 1, each once, in the order in which they were asked for
 */
record PassNumbers(List<Integer> numbers) {
    private static final Pattern ONE_OR_RANGE = Pattern.compile("(\\d{1,4})(?:\\s*(?:-|\u2013|to)\\s*(\\d{1,4}))?");

    PassNumbers {
        numbers = List.copyOf(numbers);
    }

    /** {@code 4}, {@code 2-4}, {@code 2,5}, {@code 1,3-5}. */
    static final class Converter implements ITypeConverter<PassNumbers> {
        @Override
        public PassNumbers convert(String text) {
            Set<Integer> numbers = new LinkedHashSet<>();
            for (String some : text.split(",", -1)) {
                Matcher matcher = ONE_OR_RANGE.matcher(some.strip());
                int from = matcher.matches() ? Integer.parseInt(matcher.group(1)) : 1;
                int to = matcher.matches() && matcher.group(2) != null ? Integer.parseInt(matcher.group(2)) : from;
                if (!matcher.matches() || to < from) {
                    throw new TypeConversionException(
                            "\"" + text + "\" names no passes: write 4, or 2-4, or 2,5, as --print numbers them.");
                }
                for (int number = from; number <= to; number++) {
                    numbers.add(number);
                }
            }
            return new PassNumbers(List.copyOf(numbers));
        }
    }

    /** The lesson of which these are danced. */
    Lesson of(Lesson lesson) throws Refused {
        int passes = lesson.passes().size();
        for (int number : numbers) {
            if (number < 1 || number > passes) {
                throw new Refused(
                        "The lesson has no pass " + number + ": choose of 1 to " + passes + "; --print shows them.");
            }
        }
        return lesson.only(numbers);
    }

    /** {@code 2 to 4, 6 and 9}. */
    static String told(List<Integer> numbers) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < numbers.size(); ) {
            int last = i;
            while (last + 1 < numbers.size() && numbers.get(last + 1) == numbers.get(last) + 1) {
                last++;
            }
            told.add(numbers.get(i) + (last > i ? " to " + numbers.get(last) : ""));
            i = last + 1;
        }
        int last = told.size() - 1;
        return last == 0 ? told.get(0) : String.join(", ", told.subList(0, last)) + " and " + told.get(last);
    }
}

package cuelead.cli;

import cuelead.sheet.Spelling;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/** Guesses which command or option was meant by a word that is none. */
final class Meant {
    private static final int SHORT_WORD = 3;
    private static final Pattern SHEET = Pattern.compile("(?i).*\\.(txt|pdf|docx?|html?|mht|mhtml)");

    private Meant() {}

    /** {@code Did you mean "cuelead play"?}; empty when nothing is near enough. */
    static Optional<String> by(String wrong, CommandSpec command) {
        String name = command.qualifiedName();
        if (wrong.startsWith("-")) {
            String option = wrong.split("=", 2)[0];
            return question(nearest(option, longOptions(command)));
        }
        if (!command.subcommands().isEmpty() && SHEET.matcher(wrong).matches()) {
            return question(List.of(name + " play " + wrong));
        }
        return question(nearest(wrong, command.subcommands().keySet()).stream()
                .map(word -> name + " " + word)
                .toList());
    }

    private static Set<String> longOptions(CommandSpec command) {
        Set<String> names = new LinkedHashSet<>();
        command.options().stream()
                .filter(option -> !option.hidden())
                .map(option -> option.longestName())
                .filter(name -> name.startsWith("--"))
                .forEach(names::add);
        return names;
    }

    /** The known words with the fewest letters changed: at most one in a short word, two in a longer one. */
    static List<String> nearest(String wrong, Collection<String> known) {
        String lower = wrong.toLowerCase(Locale.ROOT);
        String letters = lower.replaceFirst("^-+", "");
        int allowed = letters.length() <= SHORT_WORD ? 1 : 2;
        int best = known.stream()
                .map(word -> Spelling.distance(word, lower))
                .min(Comparator.naturalOrder())
                .orElse(Integer.MAX_VALUE);
        return best > allowed
                ? List.of()
                : known.stream()
                        .filter(word -> Spelling.distance(word, lower) == best)
                        .sorted()
                        .toList();
    }

    private static Optional<String> question(List<String> meant) {
        return meant.isEmpty()
                ? Optional.empty()
                : Optional.of("Did you mean "
                        + meant.stream().map(word -> '"' + word + '"').collect(Collectors.joining(" or ")) + "?");
    }
}

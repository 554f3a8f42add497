package cuelead.sheet;

import cuelead.dance.Count;
import cuelead.dance.Step;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Steps that are danced instead of others before a restart: "replace counts 7-8 with stomp L (7), hold (8)", "replace
 * count 16 with a touch".
 *
 * @param counts as the sheet numbers them
 * @param prose  the steps
 */
record StepChange(List<Count> counts, String prose) {
    private static final Set<String> CHANGES = Set.of(
            "replace",
            "replacing",
            "replaces",
            "change",
            "changing",
            "changes",
            "chg",
            "alter",
            "substitute",
            "substituting",
            "instead",
            "modify",
            "modifying",
            "mod",
            "swap",
            "swapping");
    private static final Set<String> WALLS = Set.of("wall", "walls");
    private static final Set<String> ENDS = Set.of("then", "restart", "begin", "start", "again", "facing");

    StepChange {
        counts = List.copyOf(counts);
    }

    /** "For count 24 touch R next to L instead of the step", "on counts 7-8 do a stomp, hold instead". */
    private static final Pattern INSTEAD = Pattern.compile(
            "\\b(?:for|on|at|dance)\\s+(?:counts?|beats?|cts?)\\s+(\\d[\\d& ,-]*?)\\s*[:,]?\\s+(?=\\p{L})(?:do |dance )?(.+?),?\\s+instead\\b",
            Pattern.CASE_INSENSITIVE);

    static Optional<StepChange> read(SheetLine line) {
        Matcher instead = INSTEAD.matcher(line.text());
        while (instead.find()) {
            Optional<CountGroup> group = CountGroup.read(instead.group(1));
            String prose = instead.group(2);
            if (group.isPresent() && DanceLine.isDanced(prose) && LineFit.fits(instead.group(1) + " " + prose)) {
                return Optional.of(of(group.get().counts(), prose));
            }
        }
        List<Token> tokens = line.tokens();
        Matcher becomes = BECOMES.matcher(line.text());
        if (becomes.find()) {
            int from = becomes.end();
            int behind = (int)
                    tokens.stream().filter(token -> token.column() <= from).count();
            String prose = line.text().substring(from, end(line, tokens.subList(behind, tokens.size())));
            return CountGroup.read(becomes.group(1)).map(group -> of(group.counts(), prose));
        }
        for (int i = 0; i < tokens.size(); i++) {
            if (tokens.get(i).is(Token.Kind.WORD)
                    && CHANGES.contains(tokens.get(i).text())) {
                return read(line, tokens.subList(i + 1, tokens.size()));
            }
        }
        return Optional.empty();
    }

    private static Optional<StepChange> read(SheetLine line, List<Token> tokens) {
        Optional<CountGroup> group = Optional.empty();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            boolean wall = i > 0 && WALLS.contains(tokens.get(i - 1).text());
            boolean number = !wall && (token.is(Token.Kind.NUMBER) || token.is(Token.Kind.AMPERSAND));
            if (group.isEmpty() && number) {
                group = CountGroup.read(line.text(), token.column() - 1);
            } else if (group.isPresent()
                    && leadsToSteps(token, line.text().substring(group.get().end()))) {
                int from = token.column() - 1 + token.text().length();
                int end = end(line, tokens.subList(i + 1, tokens.size()));
                return Optional.of(of(group.get().counts(), line.text().substring(from, end)));
            }
        }
        return Optional.empty();
    }

    private static boolean leadsToSteps(Token token, String behindCounts) {
        boolean word = token.is(Token.Kind.WORD)
                && Set.of("with", "to", "by", "for", "into", "do", "dance").contains(token.text());
        return word || (token.text().equals(":") && behindCounts.strip().startsWith(":"));
    }

    /** "Counts 15-16 become stomp R, stomp L" */
    private static final Pattern BECOMES = Pattern.compile(
            "\\b(?:counts?|beats?|cts?)\\s+(\\d[\\d& ,-]*?)\\s+(?:becomes?|are now|is now)\\s+",
            Pattern.CASE_INSENSITIVE);

    /** Steps behind the first so many counts of a wall, with the counts that they tell, else with those that they take. */
    static Optional<StepChange> behind(int place, String prose) {
        StepChange told = of(List.of(), prose);
        List<Phrase> phrases = LineFit.phrases(told.prose(), 0);
        if (!LineFit.areReadable(phrases)) {
            return Optional.empty();
        }
        Optional<StepChange> counted =
                Optional.of(told).filter(change -> !change.counts().isEmpty());
        return counted.or(() -> CountGroup.read(UsualCounts.of(phrases, place + 1))
                        .map(group -> new StepChange(group.counts(), told.prose())))
                .filter(change -> change.counts().get(0).number() == place + 1 && change.fits());
    }

    /** Whether its steps are understood and fill its counts. */
    boolean fits() {
        List<Phrase> phrases = LineFit.phrases(prose, 0);
        return LineFit.areReadable(phrases) && Fitting.of(phrases, counts).isPresent();
    }

    /** Counts that stand in the steps tell more than those of the steps that they replace. */
    private static StepChange of(List<Count> replaced, String prose) {
        String steps = LEADING.matcher(prose.strip()).replaceFirst("");
        List<CountPlaces.Counted> counted = CountPlaces.of(steps, 0);
        List<Count> told =
                counted.stream().flatMap(each -> each.group().counts().stream()).toList();
        return told.isEmpty()
                ? new StepChange(replaced, withoutCounts(steps))
                : new StepChange(
                        told,
                        withoutCounts(counted.stream()
                                .map(each -> steps.substring(each.from(), each.to()))
                                .collect(Collectors.joining(" "))));
    }

    private static final Pattern LEADING = Pattern.compile("^[\\s:]+");

    private static int end(SheetLine line, List<Token> tokens) {
        return tokens.stream()
                .filter(token -> token.is(Token.Kind.WORD) && ENDS.contains(token.text()))
                .findFirst()
                .map(token -> token.column() - 1)
                .orElse(line.text().length());
    }

    /** "LF step fwd (7), RF touch (8)": the counts are known already. */
    private static String withoutCounts(String prose) {
        return prose.replaceAll("\\(\\s*[0-9&a ,-]+\\)", " ")
                .replaceAll("[\"\u201c\u201d]", " ")
                .replaceAll("^[\\s:]+", "");
    }

    /** Its steps as a count line of their own; empty where they are not understood. */
    Optional<SheetLine> asLine(SheetLine line) {
        int first = counts.get(0).number();
        String text = first + (last() > first ? "-" + last() : "") + " " + prose;
        return LineFit.fits(text) ? Optional.of(new SheetLine(line.number(), text)) : Optional.empty();
    }

    /** The last count, for which the first is not enough. */
    int last() {
        return counts.get(counts.size() - 1).number();
    }

    /** Its steps, numbered through the dance with {@code before} counts before count 1 of the sheet's numbers. */
    List<Step> steps(int before, Weight weight, int line) {
        if (!fits()) {
            return List.of();
        }
        List<Phrase> phrases = LineFit.phrases(prose, 0);
        Optional<Fitting.Fit> fit = Fitting.of(phrases, counts);
        MoveMaker maker = new MoveMaker(Problems.unheard(), line, new Footing(weight));
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < phrases.size(); i++) {
            for (Move move : maker.moves(phrases.get(i), fit.get().sizes().get(i))) {
                Count count = fit.get()
                        .counts()
                        .get(Math.min(steps.size(), fit.get().counts().size() - 1));
                steps.add(LineReader.step(move, new Count(count.number() + before, count.split()), line));
            }
        }
        return steps;
    }
}

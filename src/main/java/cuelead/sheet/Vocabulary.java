package cuelead.sheet;

import cuelead.dance.FigureRow;
import cuelead.dance.Figures;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The words of step sheets: those of {@code words.tsv} and the names of the figures. */
final class Vocabulary {
    static final Vocabulary STANDARD = new Vocabulary(resource("words.tsv"), Figures.standard());

    private static final int LONGEST_PHRASE = 3;

    private final Map<String, Meaning> meanings = new HashMap<>();
    private final Map<String, List<FigureName>> figureNames = new HashMap<>();

    private Vocabulary(String words, Figures figures) {
        int line = 0;
        for (String row : words.split("\n", -1)) {
            line++;
            if (!row.isBlank() && !row.startsWith("#") && !row.startsWith("kind\t")) {
                add(row.split("\t", -1), line);
            }
        }
        Map<String, List<String>> more = moreNames(resource("names.tsv"));
        for (FigureRow row : figures.rows()) {
            List<String> further = more.getOrDefault(row.figure().id(), List.of());
            boolean alone = row.kind() == FigureRow.Kind.ACTION;
            addFigure(row, alone ? List.of() : ownNames(row));
            addFigure(row, further);
        }
        figureNames
                .values()
                .forEach(names -> names.sort(Comparator.comparingInt(
                                (FigureName name) -> name.words().size())
                        .reversed()));
    }

    private void add(String[] cells, int line) {
        if (cells.length != 3) {
            throw new IllegalStateException("words.tsv:" + line + ": " + cells.length + " columns, expected 3");
        }
        Term.Kind kind = Term.Kind.valueOf(cells[0].toUpperCase(Locale.ROOT));
        for (String spelling : cells[2].split(";", -1)) {
            Meaning before = meanings.put(spelling, new Meaning(kind, cells[1]));
            if (before != null) {
                throw new IllegalStateException("words.tsv:" + line + ": column spellings: twice: " + spelling);
            }
        }
    }

    private static List<String> ownNames(FigureRow row) {
        List<String> names = new ArrayList<>(row.figure().synonyms());
        names.add(row.figure().name());
        return names;
    }

    /** Names by the id of their figure. */
    private static Map<String, List<String>> moreNames(String text) {
        Map<String, List<String>> names = new HashMap<>();
        for (String row : text.split("\n", -1)) {
            String[] cells = row.split("\t", -1);
            if (cells.length == 2 && !row.startsWith("#")) {
                names.put(cells[0], List.of(cells[1].split(";", -1)));
            }
        }
        return names;
    }

    private void addFigure(FigureRow row, List<String> spellings) {
        for (String spelling : spellings) {
            List<Token> tokens = Scanner.tokens(spelling);
            tokens.stream()
                    .filter(token -> token.is(Token.Kind.WORD))
                    .forEach(token ->
                            meanings.putIfAbsent(token.text(), new Meaning(Term.Kind.FIGURE_WORD, token.text())));
            List<Term> terms = terms(tokens).stream().filter(Vocabulary::isName).toList();
            boolean onlyAction = terms.size() == 1
                    && !terms.get(0).is(Term.Kind.FIGURE_WORD)
                    && !terms.get(0).is(Term.Kind.TURN);
            if (!terms.isEmpty() && !onlyAction) {
                figureNames
                        .computeIfAbsent(terms.get(0).meaning(), first -> new ArrayList<>())
                        .add(new FigureName(terms.stream().map(Term::meaning).toList(), row));
            }
        }
    }

    private static boolean isName(Term term) {
        return !term.is(Term.Kind.MARK) && !term.is(Term.Kind.SEPARATOR) && !term.is(Term.Kind.FILLER);
    }

    /** Names that begin with this word, longest first. */
    List<FigureName> figuresBeginning(String meaning) {
        return figureNames.getOrDefault(meaning, List.of());
    }

    /** Gives every token its meaning; the longest phrase wins. Quoted text is left out. */
    List<Term> terms(List<Token> tokens) {
        List<Term> terms = new ArrayList<>();
        int at = 0;
        while (at < tokens.size()) {
            Token token = tokens.get(at);
            if (token.is(Token.Kind.WORD)) {
                at += word(tokens, at, terms);
            } else {
                other(token).ifPresent(terms::add);
                at++;
            }
        }
        return terms;
    }

    private int word(List<Token> tokens, int at, List<Term> terms) {
        Token first = tokens.get(at);
        for (int length = LONGEST_PHRASE; length >= 1; length--) {
            Optional<Meaning> meaning = phrase(tokens, at, length).map(meanings::get);
            if (meaning.isPresent()) {
                terms.add(new Term(meaning.get().kind(), meaning.get().word(), first.text(), first.column()));
                return length;
            }
        }
        Meaning meaning = singular(first.text()).orElse(new Meaning(Term.Kind.UNKNOWN, first.text()));
        terms.add(new Term(meaning.kind(), meaning.word(), first.text(), first.column()));
        return 1;
    }

    /** "Coasters", "boxes": the word without its ending. */
    private Optional<Meaning> singular(String word) {
        if (word.length() < 5 || !word.endsWith("s")) {
            return Optional.empty();
        }
        Optional<Meaning> one = Optional.ofNullable(meanings.get(word.substring(0, word.length() - 1)));
        return one.isPresent() || !word.endsWith("es")
                ? one
                : Optional.ofNullable(meanings.get(word.substring(0, word.length() - 2)));
    }

    private static Optional<String> phrase(List<Token> tokens, int at, int length) {
        if (at + length > tokens.size()) {
            return Optional.empty();
        }
        StringBuilder text = new StringBuilder();
        for (Token token : tokens.subList(at, at + length)) {
            if (!token.is(Token.Kind.WORD)) {
                return Optional.empty();
            }
            text.append(text.isEmpty() ? "" : " ").append(token.text());
        }
        return Optional.of(text.toString());
    }

    private static Optional<Term> other(Token token) {
        Term.Kind kind =
                switch (token.kind()) {
                    case NUMBER -> Term.Kind.NUMBER;
                    case FRACTION -> Term.Kind.FRACTION;
                    case CLOCK -> Term.Kind.CLOCK;
                    case SEPARATOR -> Term.Kind.SEPARATOR;
                    case AMPERSAND -> Term.Kind.LINK;
                    case OPEN -> Term.Kind.OPEN;
                    case CLOSE -> Term.Kind.CLOSE;
                    case MARK -> Term.Kind.MARK;
                    case WORD, QUOTED, UNCLOSED_QUOTE -> Term.Kind.UNKNOWN;
                };
        if (kind == Term.Kind.UNKNOWN) {
            return Optional.empty();
        }
        return Optional.of(new Term(kind, token.text(), token.text(), token.column()));
    }

    boolean knows(String word) {
        return meanings.containsKey(word);
    }

    /**
     * The known word with the fewest changed letters, when it is near enough to be meant: one letter in a short word,
     * two in a long one. Among equals a word with the same first letter, then the usual form of a word, then the longer.
     */
    Optional<String> nearest(String word) {
        int allowed = word.length() <= 4 ? 1 : 2;
        Comparator<String> order = Comparator.comparingInt((String known) -> Spelling.distance(known, word))
                .thenComparing(known -> known.charAt(0) == word.charAt(0) ? 0 : 1)
                .thenComparing(known -> meanings.get(known).word().equals(known) ? 0 : 1)
                .thenComparing(known -> -known.length())
                .thenComparing(Comparator.naturalOrder());
        return meanings.entrySet().stream()
                .filter(known -> known.getValue().kind() != Term.Kind.FILLER)
                .map(Map.Entry::getKey)
                .filter(known -> known.length() > 2 && Math.abs(known.length() - word.length()) <= allowed)
                .filter(known -> Spelling.distance(known, word) <= allowed)
                .min(order);
    }

    private static String resource(String name) {
        try (InputStream in = Vocabulary.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(name + " cannot be read", unreadable);
        }
    }

    private record Meaning(Term.Kind kind, String word) {}

    /** A figure's name in standard words. */
    record FigureName(List<String> words, FigureRow row) {}
}

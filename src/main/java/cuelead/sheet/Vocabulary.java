package cuelead.sheet;

import cuelead.dance.FigureRow;
import cuelead.dance.Figures;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The words of step sheets: those of {@code words.tsv} and the names of the figures. */
final class Vocabulary {
    static final Vocabulary STANDARD = new Vocabulary(resource("words.tsv"), Figures.standard());

    private final Map<String, Meaning> meanings = new HashMap<>();
    /** Words of the longest spelling that begins with this word. */
    private final Map<String, Integer> longest = new HashMap<>();

    private final FigureNames figureNames = new FigureNames();
    private final NearWords nearWords;

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
        figureNames.sort();
        nearWords = new NearWords(meanings);
    }

    private void add(String[] cells, int line) {
        if (cells.length != 3) {
            throw new IllegalStateException("words.tsv:" + line + ": " + cells.length + " columns, expected 3");
        }
        Term.Kind kind = Term.Kind.valueOf(cells[0].toUpperCase(Locale.ROOT));
        for (String spelling : cells[2].split(";", -1)) {
            String[] parts = spelling.split(" ", -1);
            longest.merge(parts[0], parts.length, Math::max);
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
                figureNames.add(terms, row);
            }
        }
    }

    private static boolean isName(Term term) {
        return !term.is(Term.Kind.MARK) && !term.is(Term.Kind.SEPARATOR) && !term.is(Term.Kind.FILLER);
    }

    FigureNames figureNames() {
        return figureNames;
    }

    /** Gives every token its meaning; the longest phrase wins. Quoted text is left out. */
    List<Term> terms(List<Token> tokens) {
        List<Term> terms = new ArrayList<>();
        int at = 0;
        while (at < tokens.size()) {
            Token token = tokens.get(at);
            if (isTimes(tokens, at)) {
                String number =
                        tokens.get(token.is(Token.Kind.NUMBER) ? at : at + 1).text();
                terms.add(new Term(Term.Kind.NUMBER, number, number + "x", token.column()));
                at += 2;
            } else if (token.is(Token.Kind.WORD)) {
                at += word(tokens, at, terms);
            } else {
                other(token).ifPresent(terms::add);
                at++;
            }
        }
        return terms;
    }

    /** The same for a line that is danced: a word that is not known has the meaning of the one that it must be. */
    List<Term> danced(List<Token> tokens) {
        return terms(tokens).stream().map(this::corrected).toList();
    }

    private Term corrected(Term term) {
        if (!term.is(Term.Kind.UNKNOWN)) {
            return term;
        }
        return meant(term.text())
                .map(near -> {
                    Meaning meaning = meanings.get(near);
                    return new Term(meaning.kind(), meaning.word(), term.text(), term.column(), Optional.of(near));
                })
                .orElse(term);
    }

    /** "x 2", "2 x", "2 times". */
    private static boolean isTimes(List<Token> tokens, int at) {
        if (at + 1 >= tokens.size()) {
            return false;
        }
        Token one = tokens.get(at);
        Token next = tokens.get(at + 1);
        boolean before = one.isWord("x") && next.is(Token.Kind.NUMBER);
        boolean behind = one.is(Token.Kind.NUMBER) && (next.isWord("x") || next.isWord("times"));
        return before || behind;
    }

    private int word(List<Token> tokens, int at, List<Term> terms) {
        Token first = tokens.get(at);
        for (int words = longest.getOrDefault(first.text(), 1); words >= 1; words--) {
            int length = length(tokens, at, words);
            Optional<Meaning> meaning =
                    length == 0 ? Optional.empty() : Optional.ofNullable(meanings.get(phrase(tokens, at, length)));
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

    /** How many tokens so many words are, with the hyphens between them; 0 where they are not there. */
    private static int length(List<Token> tokens, int at, int words) {
        int end = at;
        for (int word = 0; word < words; word++) {
            boolean hyphen = word > 0 && end < tokens.size() && tokens.get(end).isHyphen();
            end += hyphen ? 1 : 0;
            if (end >= tokens.size() || !tokens.get(end).is(Token.Kind.WORD)) {
                return 0;
            }
            end++;
        }
        return end - at;
    }

    private static String phrase(List<Token> tokens, int at, int length) {
        if (length == 1) {
            return tokens.get(at).text();
        }
        StringBuilder phrase = new StringBuilder(tokens.get(at).text());
        for (Token token : tokens.subList(at + 1, at + length)) {
            if (token.is(Token.Kind.WORD)) {
                phrase.append(' ').append(token.text());
            }
        }
        return phrase.toString();
    }

    private static Optional<Term> other(Token token) {
        Term.Kind kind =
                switch (token.kind()) {
                    case NUMBER, ORDINAL -> Term.Kind.NUMBER;
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

    /** The known word that a misspelt one must be. */
    Optional<String> meant(String word) {
        return meanings.containsKey(word) ? Optional.empty() : nearWords.meant(word);
    }

    Optional<String> nearest(String word) {
        return nearWords.nearest(word);
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

    /** What sort of word, and the standard word for it. */
    record Meaning(Term.Kind kind, String word) {}
}

package shaftwright.template;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shaftwright.book.CellPlace;

/**
 * A builder's formula with its addresses led to where the cells stand in the renewed workbook.
 * Names, texts, whole rows and whole columns stay as they are.
 */
final class MovedFormula {
    /** A text, or an address with or without its sheet, or a range of two, or any other word. */
    private static final Pattern TOKEN =
            Pattern.compile(
                    "\"(?:[^\"]|\"\")*\""
                            + "|(?:('(?:[^']|'')*'|[\\p{L}_][\\p{L}\\p{N}_.]*)!)?"
                            + "(\\$?)([A-Za-z]{1,3})(\\$?)([0-9]{1,7})"
                            + "(?::(\\$?)([A-Za-z]{1,3})(\\$?)([0-9]{1,7}))?"
                            + "(?![\\p{L}\\p{N}_.(!])"
                            + "|'(?:[^']|'')*'"
                            + "|[\\p{L}_\\\\][\\p{L}\\p{N}_.]*");

    private final CellMoves moves;
    private final String sheet;

    private MovedFormula(CellMoves moves, String sheet) {
        this.moves = moves;
        this.sheet = sheet;
    }

    /**
     * The text that means the same there; empty where it reads another file or an Excel table,
     * neither of which comes along.
     *
     * @param formula without the equals sign
     * @param sheet on which it stands, empty for a defined name's
     */
    static Optional<String> of(CellMoves moves, String formula, String sheet) {
        MovedFormula moved = new MovedFormula(moves, sheet);
        Matcher matcher = TOKEN.matcher(formula);
        StringBuilder between = new StringBuilder();
        int at = 0;
        while (matcher.find()) {
            between.append(formula, at, matcher.start());
            between.append(matcher.group().startsWith("'") ? matcher.group() : "");
            at = matcher.end();
        }
        between.append(formula.substring(at));
        if (between.indexOf("[") >= 0) {
            return Optional.empty();
        }
        return Optional.of(matcher.reset().replaceAll(moved::quoted));
    }

    private String quoted(MatchResult token) {
        return Matcher.quoteReplacement(token.group(3) == null ? word(token) : moved(token));
    }

    /** A quoted sheet stands before whole rows, whole columns and names. */
    private String word(MatchResult token) {
        String word = token.group();
        return word.startsWith("'") ? inQuotes(moves.sheet(unquoted(word))) : word;
    }

    private String moved(MatchResult token) {
        String spelled = token.group(1) == null ? "" : token.group(1);
        String from = spelled.isEmpty() ? sheet : unquoted(spelled);
        CellPlace first = moves.of(place(from, token.group(3), token.group(5)));
        StringBuilder text = new StringBuilder();
        String stays = spelled.isEmpty() ? moves.sheet(from) : from;
        if (!first.sheet().equals(stays)) {
            text.append(inQuotes(first.sheet())).append('!');
        } else if (!spelled.isEmpty()) {
            text.append(spelled).append('!');
        }
        address(text, token.group(2), token.group(4), first);
        if (token.group(7) != null) {
            CellPlace last = moves.of(place(from, token.group(7), token.group(9)));
            address(text.append(':'), token.group(6), token.group(8), last);
        }
        return text.toString();
    }

    private static void address(StringBuilder text, String column, String row, CellPlace place) {
        text.append(column).append(CellPlace.columnLetters(place.column()));
        text.append(row).append(place.row() + 1);
    }

    private static String inQuotes(String sheet) {
        return "'" + sheet.replace("'", "''") + "'";
    }

    private static String unquoted(String sheet) {
        return sheet.startsWith("'")
                ? sheet.substring(1, sheet.length() - 1).replace("''", "'")
                : sheet;
    }

    private static CellPlace place(String sheet, String letters, String row) {
        int column = 0;
        for (int i = 0; i < letters.length(); i++) {
            column = column * 26 + Character.toUpperCase(letters.charAt(i)) - 'A' + 1;
        }
        return new CellPlace(sheet, Math.max(0, Integer.parseInt(row) - 1), column - 1);
    }
}

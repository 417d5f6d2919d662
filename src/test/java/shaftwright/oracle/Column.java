package shaftwright.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import shaftwright.book.CellValue;

/**
 * A column of answers as the oracle keeps it: on one line, values separated by tabs, {@code *n}
 * behind one that follows n times. A text is written behind a quotation mark, an error behind an
 * exclamation mark, nothing as an underscore.
 *
 * <p>A summed column keeps texts, errors and blanks, says {@code #} for each number, and ends in
 * {@code ~}, a weighted sum of all numbers, the sum of their sizes, the place of one of them and
 * that number. A change in any of them is seen, but only the one is known.
 */
final class Column {
    /** Digits kept of a number, and the most of them behind the point. */
    private static final int DIGITS = 11;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int MOST_WEIGHT = 2;
    private static final String SUMMED = "~";
    private static final String NUMBER = "#";

    private final List<String> cells = new ArrayList<>();
    private List<String> sums = List.of();

    private Column() {}

    /** Every value. */
    static Column whole(List<CellValue> values) {
        Column column = new Column();
        for (CellValue value : values) {
            column.cells.add(text(value));
        }
        return column;
    }

    /** Numbers summed where there are more than two, the one that is kept chosen by this number. */
    static Column summed(List<CellValue> values, int choice) {
        List<Integer> places = new ArrayList<>();
        for (int place = 0; place < values.size(); place++) {
            if (values.get(place) instanceof CellValue.Numeric) {
                places.add(place);
            }
        }
        Column column = whole(values);
        if (places.size() > 2 && !column.allAlike()) {
            int kept = places.get(Math.floorMod(choice, places.size()));
            column.sums =
                    List.of(
                            rounded(sum(values)),
                            String.format(Locale.ROOT, "%.3g", size(values)),
                            String.valueOf(kept),
                            column.cells.get(kept));
            places.forEach(place -> column.cells.set(place, NUMBER));
        }
        return column;
    }

    private boolean allAlike() {
        return cells.stream().distinct().count() == 1;
    }

    /** What {@link #toString} wrote. */
    static Column parse(String line) {
        Column column = new Column();
        if (line.isEmpty()) {
            return column;
        }
        String[] parts = line.split("\t", -1);
        for (int i = 0; i < parts.length; i++) {
            if (parts[i].equals(SUMMED)) {
                column.sums = List.of(parts).subList(i + 1, parts.length);
                return column;
            }
            if (parts[i].startsWith("*")) {
                String last = column.cells.get(column.cells.size() - 1);
                for (int more = Integer.parseInt(parts[i].substring(1)); more > 0; more--) {
                    column.cells.add(last);
                }
            } else {
                column.cells.add(parts[i]);
            }
        }
        return column;
    }

    @Override
    public String toString() {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < cells.size(); ) {
            int end = i + 1;
            while (end < cells.size() && cells.get(end).equals(cells.get(i))) {
                end++;
            }
            parts.add(cells.get(i));
            if (end > i + 1) {
                parts.add("*" + (end - i - 1));
            }
            i = end;
        }
        if (!sums.isEmpty()) {
            parts.add(SUMMED);
            parts.addAll(sums);
        }
        return String.join("\t", parts);
    }

    /** The values, of a whole column. */
    List<CellValue> values() {
        return cells.stream().map(Column::value).toList();
    }

    /** The same with other words in its texts. */
    Column reworded(UnaryOperator<String> words) {
        Column column = new Column();
        for (String cell : cells) {
            column.cells.add(
                    cell.startsWith("\"") ? text(CellValue.of(words.apply(textOf(cell)))) : cell);
        }
        column.sums = sums;
        return column;
    }

    /** Whether every text of this column is among the values, in whatever order. */
    Optional<String> missingFrom(List<CellValue> found) {
        return values().stream()
                .filter(value -> !found.contains(value))
                .findFirst()
                .map(value -> "wanted " + shown(value) + ", which is not said");
    }

    /**
     * How values differ from this column, numbers by more than a bound; more of them than it has do
     * not count.
     */
    Optional<String> difference(List<CellValue> found, Bound bound) {
        if (found.size() < cells.size()) {
            return Optional.of("wanted " + cells.size() + " values, found " + found.size());
        }
        for (int i = 0; i < cells.size(); i++) {
            if (!same(cells.get(i), found.get(i), bound)) {
                return Optional.of(at(i) + shown(cells.get(i)) + ", found " + shown(found.get(i)));
            }
        }
        return sums.isEmpty() ? Optional.empty() : ofSums(found.subList(0, cells.size()), bound);
    }

    /** Where every number is within its bound, a weighted sum is within the sum of theirs. */
    private Optional<String> ofSums(List<CellValue> found, Bound bound) {
        int kept = Integer.parseInt(sums.get(2));
        if (!same(sums.get(3), found.get(kept), bound)) {
            return Optional.of(at(kept) + sums.get(3) + ", found " + shown(found.get(kept)));
        }
        double wanted = Double.parseDouble(sums.get(0));
        double size = Math.max(Double.parseDouble(sums.get(1)), size(found));
        double most =
                MOST_WEIGHT * Math.max(bound.absolute() * cells.size(), bound.relative() * size);
        return Math.abs(wanted - sum(found)) <= most
                ? Optional.empty()
                : Optional.of(
                        "wanted a sum of "
                                + wanted
                                + ", found "
                                + sum(found)
                                + " of "
                                + Column.whole(found));
    }

    private static String at(int place) {
        return "[" + place + "] wanted ";
    }

    private static boolean same(String wanted, CellValue found, Bound bound) {
        if (wanted.equals(NUMBER)) {
            return found instanceof CellValue.Numeric;
        }
        if (found instanceof CellValue.Numeric number && isNumber(wanted)) {
            return bound.holds(Double.parseDouble(wanted), number.value());
        }
        String text = text(found);
        return wanted.equals(text) || (isEmpty(wanted) && isEmpty(text));
    }

    private static boolean isEmpty(String cell) {
        return cell.equals("_") || cell.equals("\"");
    }

    private static boolean isNumber(String cell) {
        return "-0123456789".indexOf(cell.charAt(0)) >= 0;
    }

    /** Each number counts differently, so that two which change places are seen. */
    private static double sum(List<CellValue> values) {
        double sum = 0;
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i) instanceof CellValue.Numeric number) {
                sum += (1 + (i * GOLDEN) % 1) * number.value();
            }
        }
        return sum;
    }

    private static double size(List<CellValue> values) {
        double size = 0;
        for (CellValue value : values) {
            if (value instanceof CellValue.Numeric number) {
                size += Math.abs(number.value());
            }
        }
        return size;
    }

    private static String shown(CellValue value) {
        return shown(text(value));
    }

    private static String shown(String cell) {
        if (cell.equals("_")) {
            return "nothing";
        }
        return cell.startsWith("\"") ? cell + "\"" : cell.equals(NUMBER) ? "a number" : cell;
    }

    private static String text(CellValue value) {
        if (value instanceof CellValue.Numeric number) {
            return rounded(number.value());
        }
        if (value instanceof CellValue.Text text) {
            return "\""
                    + text.value().replace("\\", "\\\\").replace("\n", "\\n").replace("\t", "\\t");
        }
        if (value instanceof CellValue.Fault fault) {
            return "!" + fault.code();
        }
        return value instanceof CellValue.Truth truth ? "?" + truth.value() : "_";
    }

    private static String rounded(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e11) {
            return String.valueOf((long) value);
        }
        BigDecimal digits = new BigDecimal(value).round(new MathContext(DIGITS));
        if (digits.scale() > DIGITS) {
            digits = digits.setScale(DIGITS, RoundingMode.HALF_EVEN);
        }
        return digits.signum() == 0 ? "0" : digits.stripTrailingZeros().toPlainString();
    }

    private static CellValue value(String cell) {
        return switch (cell.charAt(0)) {
            case '_' -> CellValue.BLANK;
            case '"' -> CellValue.of(textOf(cell));
            case '!' -> new CellValue.Fault(cell.substring(1));
            case '?' -> new CellValue.Truth(cell.equals("?true"));
            default -> CellValue.of(Double.parseDouble(cell));
        };
    }

    private static String textOf(String cell) {
        StringBuilder text = new StringBuilder();
        for (int i = 1; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c == '\\') {
                char escaped = cell.charAt(++i);
                c = escaped == 'n' ? '\n' : escaped == 't' ? '\t' : escaped;
            }
            text.append(c);
        }
        return text.toString();
    }
}

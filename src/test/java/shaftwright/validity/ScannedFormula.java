package shaftwright.validity;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A formula taken apart far enough to measure it (grammar: ECMA-376 part 1, 18.17.2): functions
 * with their arguments and nesting, names, sheets that it looks at, what a shared formula must not
 * hold, and about how many bytes its parsed form takes.
 */
final class ScannedFormula {
    /** Sizes of parsed tokens in bytes (MS-XLSB 2.5.97): whole number, number, cell, area. */
    private static final int SHORT_TOKEN = 3;

    private static final int NUMBER_TOKEN = 9;
    private static final int CELL_TOKEN = 7;
    private static final int AREA_TOKEN = 13;
    private static final int NAME_TOKEN = 5;
    private static final int FUNCTION_TOKEN = 4;
    private static final int SHEET_SHARE = 2;

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d*)?([Ee][+-]?\\d+)?|\\.\\d+");
    private static final Pattern SHEETS =
            Pattern.compile(
                    "('(?:[^']|'')+'|[\\p{L}_][\\p{L}\\d_.]*(?::[\\p{L}_][\\p{L}\\d_.]*)?)!");
    private static final Pattern CELL =
            Pattern.compile("\\$?[A-Za-z]{1,3}\\$?\\d+(?![\\p{L}\\d_.(])");
    private static final Pattern LINES =
            Pattern.compile("\\$?[A-Z]{1,3}:\\$?[A-Z]{1,3}(?![\\p{L}\\d_.(])|\\$?\\d+:\\$?\\d+");
    private static final Pattern WORD = Pattern.compile("[\\p{L}_\\\\][\\p{L}\\d_.\\\\?]*");
    private static final Pattern ERROR =
            Pattern.compile("#(REF!|N/A|VALUE!|DIV/0!|NUM!|NAME\\?|NULL!)");

    /** A function as called. */
    record Called(String name, int arguments) {}

    @SuppressWarnings("ArrayRecordComponent") // counters, never compared
    private record Open(String name, int[] commas, boolean[] filled) {}

    private final String text;
    private final List<Called> calls = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final List<String> sheets = new ArrayList<>();
    private final List<Integer> literals = new ArrayList<>();
    private int deepest;
    private int bytes;
    private boolean arrayConstant;
    private boolean union;
    private boolean intersection;
    private boolean lostReference;
    private String trouble = "";

    private ScannedFormula(String text) {
        this.text = text;
    }

    static ScannedFormula of(String text) {
        ScannedFormula formula = new ScannedFormula(text);
        formula.scan();
        return formula;
    }

    List<Called> calls() {
        return calls;
    }

    /** Words that are neither cells nor functions. */
    List<String> names() {
        return names;
    }

    /** Names of sheets before an exclamation mark, without apostrophes around. */
    List<String> sheets() {
        return sheets;
    }

    /** Lengths of the texts in it. */
    List<Integer> literals() {
        return literals;
    }

    int deepest() {
        return deepest;
    }

    int bytes() {
        return bytes;
    }

    boolean hasArrayConstant() {
        return arrayConstant;
    }

    boolean hasUnion() {
        return union;
    }

    boolean hasIntersection() {
        return intersection;
    }

    boolean hasLostReference() {
        return lostReference;
    }

    /** What does not close, or "". */
    String trouble() {
        return trouble;
    }

    private void scan() {
        Deque<Open> open = new ArrayDeque<>();
        int functions = 0;
        boolean operandBefore = false;
        int at = 0;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == ' ' || c == '\n' || c == '\r') {
                int next = at;
                while (next < text.length() && Character.isWhitespace(text.charAt(next))) {
                    next++;
                }
                intersection |= operandBefore && next < text.length() && startsOperand(next);
                at = next;
                continue;
            }
            if (c != ')' && c != ',' && !open.isEmpty()) {
                open.peek().filled()[0] = true;
            }
            if (c == '"') {
                int end = closing(at, '"');
                literals.add(text.substring(at + 1, end).replace("\"\"", "\"").length());
                bytes += SHORT_TOKEN + 2 * literals.get(literals.size() - 1);
                at = end + 1;
                operandBefore = true;
            } else if (c == '{') {
                arrayConstant = true;
                int end = text.indexOf('}', at);
                if (end < 0) {
                    trouble = "an array constant does not close";
                    return;
                }
                bytes +=
                        NUMBER_TOKEN
                                * (1
                                        + (int)
                                                text.substring(at, end)
                                                        .chars()
                                                        .filter(x -> x == ',')
                                                        .count());
                at = end + 1;
                operandBefore = true;
            } else if (c == '(') {
                open.push(new Open("", new int[1], new boolean[1]));
                at++;
                operandBefore = false;
            } else if (c == ')') {
                if (open.isEmpty()) {
                    trouble = "a bracket closes that was not opened";
                    return;
                }
                Open closed = open.pop();
                if (!closed.name().isEmpty()) {
                    functions--;
                    int arguments =
                            closed.commas()[0] == 0 && !closed.filled()[0]
                                    ? 0
                                    : closed.commas()[0] + 1;
                    calls.add(new Called(closed.name(), arguments));
                }
                bytes += closed.name().isEmpty() ? 1 : FUNCTION_TOKEN;
                at++;
                operandBefore = true;
            } else if (c == ',') {
                if (open.isEmpty() || open.peek().name().isEmpty()) {
                    union = true;
                } else {
                    open.peek().commas()[0]++;
                }
                at++;
                operandBefore = false;
            } else {
                int end = operand(at);
                if (end > at && end < text.length() && text.charAt(end) == '(' && isWord(at, end)) {
                    open.push(new Open(text.substring(at, end), new int[1], new boolean[1]));
                    deepest = Math.max(deepest, ++functions);
                    at = end + 1;
                    operandBefore = false;
                } else if (end > at) {
                    take(at, end);
                    at = end;
                    operandBefore = true;
                } else {
                    bytes++;
                    at++;
                    operandBefore = c == '%' || c == '#';
                }
            }
        }
        if (!open.isEmpty()) {
            trouble = "a bracket does not close";
        }
    }

    private boolean startsOperand(int at) {
        char c = text.charAt(at);
        return Character.isLetterOrDigit(c)
                || c == '$'
                || c == '\''
                || c == '_'
                || c == '"'
                || c == '(';
    }

    private int closing(int at, char quote) {
        int end = at + 1;
        while (end < text.length()) {
            if (text.charAt(end) == quote) {
                if (end + 1 < text.length() && text.charAt(end + 1) == quote) {
                    end++;
                } else {
                    return end;
                }
            }
            end++;
        }
        trouble = "a text does not close";
        return text.length() - 1;
    }

    /** Past a number, a reference with its sheet, or a word; the same place when none is there. */
    private int operand(int at) {
        Matcher sheet = SHEETS.matcher(text).region(at, text.length());
        int from = sheet.lookingAt() ? sheet.end() : at;
        for (Pattern each : List.of(ERROR, LINES, CELL, NUMBER, WORD)) {
            Matcher matcher = each.matcher(text).region(from, text.length());
            matcher.useTransparentBounds(true);
            if (matcher.lookingAt()) {
                int end = matcher.end();
                boolean area = each == CELL && end < text.length() && text.charAt(end) == ':';
                return area ? operand(end + 1) : end;
            }
        }
        return from;
    }

    private boolean isWord(int from, int to) {
        return WORD.matcher(text.substring(from, to)).matches();
    }

    private void take(int from, int to) {
        String operand = text.substring(from, to);
        Matcher sheet = SHEETS.matcher(operand);
        boolean elsewhere = sheet.lookingAt();
        if (elsewhere) {
            String name = sheet.group(1);
            sheets.add(
                    name.startsWith("'")
                            ? name.substring(1, name.length() - 1).replace("''", "'")
                            : name);
            operand = operand.substring(sheet.end());
        }
        lostReference |= operand.startsWith("#REF!");
        if (CELL.matcher(operand).lookingAt() || LINES.matcher(operand).matches()) {
            bytes += operand.indexOf(':') > 0 ? AREA_TOKEN : CELL_TOKEN;
        } else if (NUMBER.matcher(operand).matches()) {
            bytes += operand.indexOf('.') < 0 && operand.length() < 5 ? SHORT_TOKEN : NUMBER_TOKEN;
        } else if (!operand.startsWith("#")) {
            boolean truth = operand.equals("TRUE") || operand.equals("FALSE");
            if (!truth) {
                names.add(operand);
            }
            bytes += NAME_TOKEN;
        }
        bytes += elsewhere ? SHEET_SHARE : 0;
    }
}

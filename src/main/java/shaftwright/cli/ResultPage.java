package shaftwright.cli;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.regex.Pattern;
import shaftwright.contract.InputKind;
import shaftwright.shaft.Binding;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.units.LengthUnit;

/** Lines of a terminal of 80 columns, with a unit on every number. */
final class ResultPage {
    private static final int WIDTH = 80;
    private static final int INDENT = 2;
    private static final int LABEL = 20;
    private static final int COLUMN = 29;

    /** The space within {@code 25 3/8} and before its unit, where no line ends. */
    private static final Pattern INSIDE_A_FIGURE =
            Pattern.compile("(?<=[0-9]) (?=[0-9]+/[0-9]|(in|mm|lb·ft|N·m|%)(\\W|$))");

    private static final char UNBROKEN = '\u00a0';

    private final PrintStream out;
    private final LengthUnit unit;
    private final LengthStyle style;

    ResultPage(PrintStream out, LengthUnit unit) {
        this.out = out;
        this.unit = unit;
        style = unit == LengthUnit.INCH ? LengthStyle.DECIMAL_INCH : LengthStyle.MILLIMETRES;
    }

    LengthUnit unit() {
        return unit;
    }

    /** What stands above a block. */
    void title(String text) {
        out.println(text);
    }

    /** Ends a block. */
    void gap() {
        out.println();
    }

    /** One or more sentences, nothing when the text is empty. */
    void sentence(String text) {
        if (!text.isEmpty()) {
            wrapped(INDENT, " ".repeat(INDENT), text);
        }
    }

    /** A line as it is, further in than sentences. */
    void line(String text) {
        print(" ".repeat(2 * INDENT) + text);
    }

    /** Words and what they stand for, below each other where a line can't hold both. */
    void labelled(String words, String text) {
        String together = words + ": " + text;
        if (INDENT + together.length() <= WIDTH) {
            sentence(text.isEmpty() ? words : together);
        } else {
            sentence(words + ":");
            wrapped(3 * INDENT, " ".repeat(3 * INDENT), text);
        }
    }

    /** A sentence that is one of several. */
    void item(String text) {
        wrapped(INDENT + 2, " ".repeat(INDENT) + "- ", text);
    }

    /** A text behind its label; its further lines begin below its first. */
    void row(String label, String text) {
        wrapped(LABEL, padded(" ".repeat(INDENT) + label, LABEL), text);
    }

    /** A text for each side behind their label. */
    void row(String label, List<String> texts) {
        StringBuilder line = new StringBuilder();
        for (String text : texts) {
            line.append(padded(text, COLUMN + 1));
        }
        out.println(padded(" ".repeat(INDENT) + label, LABEL) + line.toString().stripTrailing());
    }

    /** A text with spaces behind it, up to this width. */
    static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private void wrapped(int indent, String before, String text) {
        int width = WIDTH - indent;
        String start = before;
        String rest = INSIDE_A_FIGURE.matcher(text).replaceAll(String.valueOf(UNBROKEN));
        while (rest.length() > width) {
            int space = rest.lastIndexOf(' ', width);
            int end = space <= 0 ? width : space;
            print(start + rest.substring(0, end));
            rest = rest.substring(end).trim();
            start = " ".repeat(indent);
        }
        print(start + rest);
    }

    private void print(String line) {
        out.println(line.replace(UNBROKEN, ' ').stripTrailing());
    }

    /** {@code 25.375 in}: as the workbook's unit has it. */
    String length(double mm) {
        return new Length(mm).format(style);
    }

    /** Where in the travel something is, and in which state where several are asked for. */
    String at(Binding binding) {
        String travel = at(binding.travel());
        return binding.state().isEmpty() ? travel : travel + " (" + binding.state() + ")";
    }

    /**
     * Where in the travel something is.
     *
     * @param travel mm from ride height, up positive
     */
    String at(double travel) {
        if (Math.abs(travel) < 0.05) {
            return "at ride height";
        }
        return "at " + length(Math.abs(travel)) + (travel > 0 ? " bump" : " droop");
    }

    /** N·m in the workbook's unit. */
    String torque(double newtonMetres) {
        return rounded(InputKind.TORQUE.typed(newtonMetres, unit), 0)
                + " "
                + InputKind.TORQUE.symbol(unit);
    }

    static String angle(double radians) {
        return rounded(Math.toDegrees(radians), 1) + "°";
    }

    static String rounded(double number, int places) {
        return Double.isNaN(number)
                ? "unknown"
                : BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }
}

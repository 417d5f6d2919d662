package shaftwright.template;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontUnderline;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.contract.InputKind;
import shaftwright.live.LiveLine;
import shaftwright.live.Quantity;
import shaftwright.study.DerivationStep;
import shaftwright.units.LengthUnit;

/**
 * Cell styles. Typed cells have a solid box and a pale fill, results a dotted line below, figures
 * of an engine block a double one, working cells grey digits: four looks that a black-and-white
 * printer keeps apart.
 */
final class Look {
    static final String FONT = "Liberation Sans";

    /** Shades of straw, which no eye tells from each other. */
    private static final int STRAWS = 8;

    private static final XSSFColor BAND = opaque(0xE4, 0xE8, 0xEC);
    private static final XSSFColor INK = opaque(0x22, 0x2B, 0x35);
    private static final XSSFColor GREY = opaque(0x66, 0x66, 0x66);

    private final XSSFWorkbook workbook;
    private final LengthUnit unit;
    private final Map<String, XSSFCellStyle> styles = new HashMap<>();

    Look(XSSFWorkbook workbook, LengthUnit unit) {
        this.workbook = workbook;
        this.unit = unit;
        XSSFFont plain = workbook.getFontAt(0);
        plain.setFontName(FONT);
        plain.setFontHeightInPoints((short) 10);
        // Both refer to a theme, and the workbook has none.
        plain.getCTFont().setColorArray(null);
        plain.getCTFont().setSchemeArray(null);
    }

    /** Whose styles these are. */
    XSSFWorkbook workbook() {
        return workbook;
    }

    /** A typed cell. */
    XSSFCellStyle input(InputKind kind) {
        return input(kind, 0);
    }

    /**
     * A typed cell in a column. LibreOffice 7.4 forgets the right indent of a cell that looks like
     * the last one of its row that is not empty but has another input message, so that numbers
     * touch the border: columns beside each other have shades of their own.
     */
    XSSFCellStyle input(InputKind kind, int column) {
        int shade = column % STRAWS;
        return style(
                "input " + kind + shade,
                style -> {
                    fill(style, opaque(0xFF, 0xF4, 0xCC + shade));
                    box(style, BorderStyle.THIN);
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                    style.setAlignment(
                            kind.numeric() ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
                    style.setWrapText(!kind.numeric());
                    style.setIndention((short) 1);
                    style.setDataFormat(format(inputFormat(kind)));
                });
    }

    private static String inputFormat(InputKind kind) {
        return switch (kind) {
            case ANGLE -> "0.0##";
            case NUMBER -> "0.0##";
            case TORQUE, LOAD, STRESS, SPEED, DENSITY -> "General";
            case COUNT -> "0";
            case MONEY -> "#,##0.00";
            default -> "@";
        };
    }

    /** A result that a builder reads. */
    XSSFCellStyle result(Quantity quantity) {
        return shown("result ", quantity, BorderStyle.DOTTED);
    }

    /** The same of a fraction, which stands under its decimals. */
    XSSFCellStyle fraction() {
        return style(
                "fraction",
                style -> {
                    style.cloneStyleFrom(result(Quantity.TEXT));
                    style.setAlignment(HorizontalAlignment.RIGHT);
                });
    }

    /** A figure that a fill writes and that does not follow changes by itself. */
    XSSFCellStyle engine(Quantity quantity) {
        return shown("engine ", quantity, BorderStyle.DOUBLE);
    }

    /** Numbers of the styles of figures that a fill writes. */
    Set<Long> engines() {
        return Arrays.stream(Quantity.values())
                .map(quantity -> (long) engine(quantity).getIndex())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** A live line's cells: a result, or figures that a fill writes. */
    XSSFCellStyle of(LiveLine line) {
        return line.isEngine() ? engine(line.quantity()) : result(line.quantity());
    }

    private XSSFCellStyle shown(String name, Quantity quantity, BorderStyle below) {
        return style(
                name + quantity,
                style -> {
                    style.setBorderBottom(below);
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                    // Money may be words: what is lacking.
                    style.setWrapText(quantity == Quantity.TEXT || quantity == Quantity.MONEY);
                    style.setAlignment(
                            quantity == Quantity.TEXT
                                    ? HorizontalAlignment.LEFT
                                    : HorizontalAlignment.RIGHT);
                    style.setIndention((short) 1);
                    style.setDataFormat(format(resultFormat(quantity)));
                });
    }

    /** A figure of a step that may be worked out again by hand: with its unit. */
    XSSFCellStyle step(DerivationStep.Kind kind) {
        return style(
                "step " + kind,
                style -> {
                    style.setBorderBottom(BorderStyle.DOTTED);
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                    style.setAlignment(HorizontalAlignment.RIGHT);
                    int decimals = kind.decimals(unit);
                    String number = decimals == 0 ? "0" : "0." + "0".repeat(decimals);
                    String symbol = kind.symbol(unit);
                    style.setDataFormat(
                            format(symbol.isEmpty() ? number : number + "\"" + symbol + "\""));
                });
    }

    /** What to do next, in bold; no line below, since it goes when there is nothing to do. */
    XSSFCellStyle next() {
        return style(
                "next",
                style -> {
                    style.setFont(font(INK, true, 11, FontUnderline.SINGLE));
                    style.setWrapText(true);
                    style.setAlignment(HorizontalAlignment.LEFT);
                    style.setIndention((short) 1);
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                });
    }

    /** A verdict: wrapped, boxed, at the top of its cell. */
    XSSFCellStyle verdict() {
        return style(
                "verdict",
                style -> {
                    style.setWrapText(true);
                    style.setAlignment(HorizontalAlignment.LEFT);
                    style.setIndention((short) 1);
                    style.setVerticalAlignment(VerticalAlignment.TOP);
                    box(style, BorderStyle.MEDIUM);
                });
    }

    /** A figure on a working sheet. */
    XSSFCellStyle working(Quantity quantity) {
        return style(
                "working " + quantity,
                style -> {
                    style.setFont(font(GREY, false, 9));
                    style.setDataFormat(
                            format(
                                    switch (quantity) {
                                        case MILLIMETRE, SHOWN_LENGTH -> "0.0000";
                                        case RADIAN -> "0.000000";
                                        case WHOLE, ORDINAL -> "0";
                                        default -> "General";
                                    }));
                });
    }

    private String resultFormat(Quantity quantity) {
        return switch (quantity) {
            case SHOWN_LENGTH -> unit == LengthUnit.INCH ? "0.000" : "0.0";
            case MILLIMETRE -> "0.0";
            case DEGREE -> "0.0";
            case MONEY -> "#,##0.00";
            case NUMBER -> "0.0";
            // A factor that fails never reads as 1.
            case FACTOR -> "[<0.995]0.00;[<1]\"0.99\";0.00";
            case WHOLE, ORDINAL, TORQUE -> "0";
            default -> "General";
        };
    }

    XSSFCellStyle title() {
        return style("title", style -> style.setFont(font(INK, true, 16)));
    }

    XSSFCellStyle heading() {
        return style(
                "heading",
                style -> {
                    style.setFont(font(INK, true, 11));
                    fill(style, BAND);
                    style.setBorderBottom(BorderStyle.MEDIUM);
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                });
    }

    /** A scenario's letter in a heading, over figures that stand on the right of their cells. */
    XSSFCellStyle letter() {
        return style(
                "letter",
                style -> {
                    style.cloneStyleFrom(heading());
                    style.setAlignment(HorizontalAlignment.RIGHT);
                    style.setIndention((short) 1);
                });
    }

    XSSFCellStyle columnHead() {
        return style(
                "column head",
                style -> {
                    style.setFont(font(INK, true, 10));
                    style.setWrapText(true);
                    style.setAlignment(HorizontalAlignment.CENTER);
                    style.setVerticalAlignment(VerticalAlignment.BOTTOM);
                    style.setBorderBottom(BorderStyle.THIN);
                });
    }

    XSSFCellStyle label() {
        return style(
                "label",
                style -> {
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                    style.setWrapText(true);
                });
    }

    XSSFCellStyle bold() {
        return style("bold", style -> style.setFont(font(INK, true, 10)));
    }

    /** A label beside a result, in bold. */
    XSSFCellStyle boldLabel() {
        return style(
                "bold label",
                style -> {
                    style.setFont(font(INK, true, 10));
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                });
    }

    /** A name that leads to its sheet. */
    XSSFCellStyle link() {
        return style(
                "link",
                style -> {
                    style.setFont(font(INK, true, 10, FontUnderline.SINGLE));
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                });
    }

    /** The same beside a verdict or prose, which begin at the top of their cells. */
    XSSFCellStyle topLabel() {
        return style(
                "top label",
                style -> {
                    style.cloneStyleFrom(boldLabel());
                    style.setVerticalAlignment(VerticalAlignment.TOP);
                });
    }

    XSSFCellStyle note() {
        return style(
                "note",
                style -> {
                    style.setFont(font(GREY, false, 9));
                    style.setWrapText(true);
                    style.setAlignment(HorizontalAlignment.LEFT);
                    style.setIndention((short) 1);
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                });
    }

    /** A sentence over several cells. */
    XSSFCellStyle prose() {
        return style(
                "prose",
                style -> {
                    style.setWrapText(true);
                    style.setVerticalAlignment(VerticalAlignment.TOP);
                });
    }

    /** A short mark, number or letter in the middle of its column. */
    XSSFCellStyle centred() {
        return style(
                "centred",
                style -> {
                    style.setAlignment(HorizontalAlignment.CENTER);
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                });
    }

    /** A text or a number of whatever kind, in a list. */
    XSSFCellStyle listed() {
        return style(
                "listed",
                style -> {
                    style.setAlignment(HorizontalAlignment.RIGHT);
                    style.setIndention((short) 1);
                    style.setVerticalAlignment(VerticalAlignment.CENTER);
                    style.setWrapText(true);
                });
    }

    /** A length along an edge of a drawing, at the line that it stands for. */
    XSSFCellStyle tick(HorizontalAlignment toward) {
        return style(
                "tick " + toward,
                style -> {
                    style.setFont(font(INK, false, 8));
                    style.setAlignment(toward);
                    style.setVerticalAlignment(
                            toward == HorizontalAlignment.CENTER
                                    ? VerticalAlignment.BOTTOM
                                    : VerticalAlignment.TOP);
                    switch (toward) {
                        case LEFT -> style.setBorderLeft(BorderStyle.THIN);
                        case RIGHT -> style.setBorderRight(BorderStyle.THIN);
                        default -> style.setBorderBottom(BorderStyle.THIN);
                    }
                    style.setDataFormat(format("General"));
                });
    }

    /** A box to tick or to write into on paper. */
    XSSFCellStyle blankBox() {
        return style("blank box", style -> box(style, BorderStyle.THIN));
    }

    private interface Shape {
        void on(XSSFCellStyle style);
    }

    private XSSFCellStyle style(String name, Shape shape) {
        XSSFCellStyle style = styles.get(name);
        if (style == null) {
            style = workbook.createCellStyle();
            shape.on(style);
            styles.put(name, style);
        }
        return style;
    }

    private short format(String text) {
        return workbook.createDataFormat().getFormat(text);
    }

    /** Each call appends an element to the font, and their order is fixed: name last. */
    private XSSFFont font(XSSFColor colour, boolean bold, int points) {
        return font(colour, bold, points, FontUnderline.NONE);
    }

    /** What a font has stands in the order in which files want it. */
    private XSSFFont font(XSSFColor colour, boolean bold, int points, FontUnderline underline) {
        XSSFFont font = workbook.createFont();
        font.getCTFont().setNameArray(null);
        font.getCTFont().setSzArray(null);
        font.setBold(bold);
        if (underline != FontUnderline.NONE) {
            font.setUnderline(underline);
        }
        font.setFontHeightInPoints((short) points);
        font.setColor(colour);
        font.setFontName(FONT);
        return font;
    }

    /** Files name colours by four bytes, opacity first. */
    private static XSSFColor opaque(int red, int green, int blue) {
        return new XSSFColor(new byte[] {(byte) 0xFF, (byte) red, (byte) green, (byte) blue}, null);
    }

    private static void fill(XSSFCellStyle style, XSSFColor colour) {
        style.setFillForegroundColor(colour);
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }

    private static void box(XSSFCellStyle style, BorderStyle border) {
        style.setBorderTop(border);
        style.setBorderBottom(border);
        style.setBorderLeft(border);
        style.setBorderRight(border);
    }
}

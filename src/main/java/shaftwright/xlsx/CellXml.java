package shaftwright.xlsx;

import shaftwright.book.CellValue;

/** How a cell's value is written: the type attribute and the value element (CT_Cell). */
final class CellXml {
    private CellXml() {}

    /** The {@code t} attribute, or null for none. */
    static String type(CellValue value, boolean formula) {
        if (value instanceof CellValue.Text) {
            return formula ? "str" : "inlineStr";
        }
        if (value instanceof CellValue.Truth) {
            return "b";
        }
        return value instanceof CellValue.Fault ? "e" : null;
    }

    /** Appends the value element; nothing for a blank. */
    static void value(StringBuilder out, String prefix, CellValue value, boolean formula) {
        if (value instanceof CellValue.Text text && !formula) {
            inlineText(out, prefix, text.value());
        } else if (!(value instanceof CellValue.Blank)) {
            out.append('<').append(prefix).append("v>");
            XmlText.encode(out, plain(value));
            out.append("</").append(prefix).append("v>");
        }
    }

    private static void inlineText(StringBuilder out, String prefix, String text) {
        out.append('<').append(prefix).append("is><").append(prefix).append('t');
        if (!text.equals(text.strip()) || text.indexOf('\n') >= 0) {
            out.append(" xml:space=\"preserve\"");
        }
        out.append('>');
        XmlText.encode(out, text);
        out.append("</").append(prefix).append("t></").append(prefix).append("is>");
    }

    /** A value as plain text. */
    static String plain(CellValue value) {
        if (value instanceof CellValue.Numeric number) {
            return number(number.value());
        }
        if (value instanceof CellValue.Text text) {
            return text.value();
        }
        if (value instanceof CellValue.Truth truth) {
            return truth.value() ? "1" : "0";
        }
        return value instanceof CellValue.Fault fault ? fault.code() : "";
    }

    /** A text that reads back as the same double; whole numbers without a point. */
    static String number(double value) {
        long whole = (long) value;
        if (whole == value && whole < 1_000_000_000_000_000L && whole > -1_000_000_000_000_000L) {
            return Long.toString(whole);
        }
        return Double.toString(value);
    }

    /** Whether a cell that holds one value need not change to hold the other. */
    static boolean same(CellValue one, CellValue other) {
        if (one instanceof CellValue.Numeric a && other instanceof CellValue.Numeric b) {
            return a.value() == b.value();
        }
        if (one instanceof CellValue.Text a && other instanceof CellValue.Text b) {
            return a.value().equals(b.value());
        }
        if (one instanceof CellValue.Truth a && other instanceof CellValue.Truth b) {
            return a.value() == b.value();
        }
        if (one instanceof CellValue.Fault a && other instanceof CellValue.Fault b) {
            return a.code().equals(b.code());
        }
        return one instanceof CellValue.Blank && other instanceof CellValue.Blank;
    }
}

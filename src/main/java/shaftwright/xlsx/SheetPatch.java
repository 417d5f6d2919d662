package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;

/** Turns new values of one sheet's cells into changes of its text. */
final class SheetPatch {
    private final SheetPart sheet;
    private final String name;
    private final PartText text;
    private final Map<CellPlace, CellValue> values;
    private final List<Splice> splices = new ArrayList<>();
    private final String prefix;

    private SheetPatch(SheetPart sheet, String name, Map<CellPlace, CellValue> values) {
        this.sheet = sheet;
        this.name = name;
        this.text = sheet.part();
        this.values = values;
        this.prefix = sheet.prefix();
    }

    /** The changes that give these cells of this sheet their new values. */
    static List<Splice> splices(SheetPart sheet, String name, Map<CellPlace, CellValue> values) {
        SheetPatch patch = new SheetPatch(sheet, name, values);
        patch.patchRows();
        return patch.splices;
    }

    private void patchRows() {
        long[] places = sortedPlaces();
        StringBuilder newRows = new StringBuilder();
        int from = 0;
        while (from < places.length) {
            int row = (int) (places[from] >> 32);
            int to = from + 1;
            while (to < places.length && (int) (places[to] >> 32) == row) {
                to++;
            }
            int index = sheet.findRow(row);
            if (index >= 0) {
                patchRow(index, places, from, to);
            } else {
                insertRow(-index - 1, row, newCells(places, from, to, ""), newRows);
            }
            from = to;
        }
        if (newRows.length() > 0) {
            String tag = text.text(sheet.dataTag(), sheet.dataTagEnd());
            splices.add(
                    new Splice(
                            sheet.dataTag(), sheet.dataTagEnd(), opened(tag, newRows.toString())));
        }
    }

    private long[] sortedPlaces() {
        long[] places = new long[values.size()];
        int count = 0;
        for (CellPlace place : values.keySet()) {
            places[count++] = (long) place.row() << 32 | place.column();
        }
        Arrays.sort(places);
        return places;
    }

    private CellValue value(long place) {
        return values.get(new CellPlace(name, (int) (place >> 32), (int) place));
    }

    private void insertRow(int index, int row, String cells, StringBuilder newRows) {
        if (cells.isEmpty()) {
            return;
        }
        String written =
                "<" + prefix + "row r=\"" + (row + 1) + "\">" + cells + "</" + prefix + "row>";
        if (sheet.dataClose() < 0) {
            newRows.append(written);
            return;
        }
        boolean last = index >= sheet.rowCount();
        int at = last ? sheet.dataClose() : sheet.row(index, SheetPart.ROW_TAG);
        splices.add(new Splice(at, at, written));
    }

    private void patchRow(int index, long[] places, int from, int to) {
        int tagStart = sheet.row(index, SheetPart.ROW_TAG);
        int tagEnd = sheet.row(index, SheetPart.ROW_TAG_END);
        int close = sheet.row(index, SheetPart.ROW_CLOSE);
        String tag = text.text(tagStart, tagEnd);
        String rowStyle = rowStyle(tag);
        if (close < 0) {
            String cells = newCells(places, from, to, rowStyle);
            if (!cells.isEmpty()) {
                String unspanned = TagText.withoutAttribute(tag, "spans");
                splices.add(new Splice(tagStart, tagEnd, opened(unspanned, cells)));
            }
            return;
        }
        int tagSplice = splices.size();
        boolean inserted = false;
        for (int i = from; i < to; i++) {
            int cell = sheet.findCell(index, (int) places[i]);
            if (cell >= 0) {
                patchCell(cell, value(places[i]));
            } else {
                int next = -cell - 1;
                boolean last = next >= sheet.cellsEnd(index);
                int at = last ? close : sheet.cell(next, SheetPart.TAG);
                String written = newCells(places, i, i + 1, rowStyle);
                if (!written.isEmpty()) {
                    splices.add(new Splice(at, at, written));
                    inserted = true;
                }
            }
        }
        // The spans hint is optional; a wrong one would be worse than none.
        if (inserted && TagText.attribute(tag, "spans") != null) {
            String unspanned = TagText.withoutAttribute(tag, "spans");
            splices.add(tagSplice, new Splice(tagStart, tagEnd, unspanned));
        }
    }

    private static String rowStyle(String tag) {
        String custom = TagText.attribute(tag, "customFormat");
        String style = TagText.attribute(tag, "s");
        boolean used = custom != null && (custom.equals("1") || custom.equals("true"));
        return used && style != null ? style : "";
    }

    private String newCells(long[] places, int from, int to, String rowStyle) {
        StringBuilder out = new StringBuilder();
        for (int i = from; i < to; i++) {
            CellValue value = value(places[i]);
            if (value instanceof CellValue.Blank) {
                continue;
            }
            int column = (int) places[i];
            out.append('<').append(prefix).append("c r=\"");
            out.append(CellPlace.columnLetters(column)).append((places[i] >> 32) + 1).append('"');
            if (!rowStyle.isEmpty()) {
                out.append(" s=\"").append(rowStyle).append('"');
            } else if (sheet.columnStyle(column) > 0) {
                out.append(" s=\"").append(sheet.columnStyle(column)).append('"');
            }
            String type = CellXml.type(value, false);
            if (type != null) {
                out.append(" t=\"").append(type).append('"');
            }
            out.append('>');
            CellXml.value(out, prefix, value, false);
            out.append("</").append(prefix).append("c>");
        }
        return out.toString();
    }

    private void patchCell(int cell, CellValue value) {
        boolean formula = sheet.hasFormula(cell);
        String type = CellXml.type(value, formula);
        StringBuilder written = new StringBuilder(24);
        CellXml.value(written, prefix, value, formula);
        int tagEnd = sheet.cell(cell, SheetPart.TAG_END);
        boolean selfClosing = sheet.cell(cell, SheetPart.CLOSE) < 0;
        if (selfClosing || type != null || sheet.cell(cell, SheetPart.TYPED) != 0) {
            int tagStart = sheet.cell(cell, SheetPart.TAG);
            String tag = text.text(tagStart, tagEnd);
            String newTag = retyped(tag, type);
            if (selfClosing && written.length() > 0) {
                newTag = opened(newTag, written.toString());
            }
            if (!newTag.equals(tag)) {
                splices.add(new Splice(tagStart, tagEnd, newTag));
            }
        }
        if (!selfClosing) {
            int from = sheet.cell(cell, SheetPart.VALUE);
            int to = sheet.cell(cell, SheetPart.VALUE_END);
            if (from < 0) {
                from = formula ? sheet.cell(cell, SheetPart.FORMULA_END) : tagEnd;
                to = from;
            }
            splices.add(new Splice(from, to, written.toString()));
        }
    }

    /** The cell's tag with the new value's type; metadata of the old value goes with it. */
    private static String retyped(String tag, String type) {
        String plain = TagText.withoutAttribute(tag, "vm");
        String old = TagText.attribute(plain, "t");
        if (type == null) {
            return old == null || old.equals("n") ? plain : TagText.withoutAttribute(plain, "t");
        }
        return type.equals(old) ? plain : TagText.withAttribute(plain, "t", type);
    }

    /** A self-closing tag opened around this content. */
    private static String opened(String tag, String content) {
        int name = 1;
        while (tag.charAt(name) > ' ' && tag.charAt(name) != '/' && tag.charAt(name) != '>') {
            name++;
        }
        String open = tag.substring(0, tag.length() - 2).stripTrailing();
        return open + ">" + content + "</" + tag.substring(1, name) + ">";
    }
}

package shaftwright.validity;

import com.ctc.wstx.stax.WstxInputFactory;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** One sheet, read from top to bottom: cells, formulas, and what lies over ranges of them. */
final class SheetRules {
    private static final WstxInputFactory XML = new WstxInputFactory();
    private static final String XML_NAMESPACE = "http://www.w3.org/XML/1998/namespace";

    /**
     * What a sheet's cells refer to.
     *
     * @param strings number of shared strings
     * @param cellFormats number of cell formats
     * @param differentialFormats number of formats for conditions
     * @param newest version of Excel whose functions cells may use
     */
    record Surroundings(
            FormulaRules formulas,
            int strings,
            int cellFormats,
            int differentialFormats,
            int newest) {}

    private final String part;
    private final Surroundings around;
    private final Consumer<Finding> findings;
    private final XMLStreamReader reader;
    private final Map<Integer, CellRange> shared = new HashMap<>();
    private final List<CellRange> merged = new ArrayList<>();
    private final Set<Integer> priorities = new HashSet<>();
    private final Set<String> ids;
    private CellRange dimension;
    private int row;
    private int column;
    private String cell = "";
    private int hyperlinks;

    SheetRules(PackageFile file, String part, Surroundings around, Consumer<Finding> findings) {
        this.part = part;
        this.around = around;
        this.findings = findings;
        ids = PackageRules.ids(file.relationships(part));
        try {
            reader = XML.createXMLStreamReader(new ByteArrayInputStream(file.parts().get(part)));
        } catch (XMLStreamException e) {
            throw new IllegalArgumentException(part + " is no XML", e);
        }
    }

    void check() {
        try {
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamConstants.START_ELEMENT) {
                    element();
                }
            }
        } catch (XMLStreamException e) {
            throw new IllegalArgumentException(part + " is no XML", e);
        }
        if (hyperlinks > ExcelLimits.HYPERLINKS) {
            find("", hyperlinks + " hyperlinks");
        }
    }

    private void element() throws XMLStreamException {
        relationships();
        switch (reader.getLocalName()) {
            case "dimension" -> dimension = range("dimension", attribute("ref"));
            case "col" -> column();
            case "row" -> row();
            case "c" -> cell();
            case "mergeCell" -> merge();
            case "dataValidation" -> validation();
            case "conditionalFormatting", "ignoredError" -> ranges(attribute("sqref"));
            case "cfRule" -> condition();
            case "formula" -> formula(reader.getElementText());
            case "hyperlink" -> hyperlink();
            case "rowBreaks", "colBreaks" ->
                    most(number("count", 0), ExcelLimits.PAGE_BREAKS, "page breaks");
            case "oddHeader", "oddFooter", "evenHeader", "evenFooter" ->
                    most(
                            reader.getElementText().length(),
                            ExcelLimits.HEADER_CHARACTERS,
                            "characters in a header or footer");
            default -> {}
        }
    }

    private void relationships() {
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            if (PackageFile.RELATIONSHIPS.equals(reader.getAttributeNamespace(i))) {
                PackageRules.use(part, reader.getAttributeValue(i), ids, findings);
            }
        }
    }

    private void column() {
        int first = number("min", 0);
        int last = number("max", 0);
        if (first <= column || last < first || last > ExcelLimits.COLUMNS) {
            find("columns " + first + " to " + last, "out of order or too far right");
        }
        column = last;
        String width = attribute("width");
        if (!width.isEmpty() && Double.parseDouble(width) > ExcelLimits.COLUMN_WIDTH) {
            find("columns " + first + " to " + last, "width " + width);
        }
    }

    private void row() {
        int next = number("r", row + 1);
        if (next <= row || next > ExcelLimits.ROWS) {
            find("row " + next, "after row " + row);
        }
        row = next;
        column = 0;
        String height = attribute("ht");
        if (!height.isEmpty() && Double.parseDouble(height) > ExcelLimits.ROW_HEIGHT) {
            find("row " + row, "height " + height);
        }
        format(number("s", 0), "row " + row);
    }

    private void cell() throws XMLStreamException {
        cell = attribute("r");
        CellRange place = range("cell", cell);
        if (place == null) {
            return;
        }
        if (place.firstRow() != row || place.firstColumn() <= column) {
            find(cell, "after column " + column + " of row " + row);
        }
        column = place.firstColumn();
        if (dimension != null && !dimension.holds(place)) {
            find(cell, "outside the sheet's dimension");
        }
        format(number("s", 0), cell);
        String type = attribute("t");
        while (reader.next() != XMLStreamConstants.END_ELEMENT
                || !reader.getLocalName().equals("c")) {
            if (!reader.isStartElement()) {
                continue;
            }
            switch (reader.getLocalName()) {
                case "f" -> cellFormula(place);
                case "v" -> value(type);
                case "t" -> {
                    String space = reader.getAttributeValue(XML_NAMESPACE, "space");
                    String text = reader.getElementText();
                    SharedStringsRules.checkSpaces(
                            part, cell, text, space == null ? "" : space, findings);
                    SharedStringsRules.checkLength(part, cell, text.length(), findings);
                }
                default -> {}
            }
        }
    }

    private void format(int number, String place) {
        if (number >= around.cellFormats()) {
            find(place, "cell format " + number + " of " + around.cellFormats());
        }
    }

    private void value(String type) throws XMLStreamException {
        String text = reader.getElementText();
        switch (type) {
            case "s" -> {
                if (Integer.parseInt(text) >= around.strings()) {
                    find(cell, "string " + text + " of " + around.strings());
                }
            }
            case "str" -> SharedStringsRules.checkLength(part, cell, text.length(), findings);
            case "b" -> oneOf(text, "0", "1");
            case "e" ->
                    oneOf(
                            text,
                            "#N/A",
                            "#VALUE!",
                            "#REF!",
                            "#DIV/0!",
                            "#NUM!",
                            "#NAME?",
                            "#NULL!",
                            "#GETTING_DATA");
            default -> {
                if (!text.matches("-?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?")) {
                    find(cell, "no number: " + text);
                }
            }
        }
    }

    private void oneOf(String text, String... allowed) {
        if (!List.of(allowed).contains(text)) {
            find(cell, "no such value: " + text);
        }
    }

    private void cellFormula(CellRange place) throws XMLStreamException {
        boolean isShared = attribute("t").equals("shared");
        int number = number("si", -1);
        String ref = attribute("ref");
        String text = reader.getElementText();
        if (isShared && text.isEmpty()) {
            CellRange reach = shared.get(number);
            if (reach == null || !reach.holds(place)) {
                find(cell, "shares formula " + number + ", which does not reach it");
            }
            return;
        }
        formula(text);
        if (!isShared) {
            return;
        }
        CellRange all = range("ref", ref);
        if (all != null
                && (all.firstRow() != place.firstRow()
                        || all.firstColumn() != place.firstColumn())) {
            find(cell, "is not the first cell of " + ref);
        }
        if (shared.put(number, all == null ? place : all) != null) {
            find(cell, "shared formula " + number + " begins twice");
        }
        FormulaRules.wrongWhenShared(ScannedFormula.of(text)).forEach(each -> find(cell, each));
    }

    private void formula(String text) {
        around.formulas()
                .wrong(text, ScannedFormula.of(text), around.newest())
                .forEach(each -> find(cell, each));
    }

    private void merge() {
        CellRange range = range("mergeCell", attribute("ref"));
        if (range == null) {
            return;
        }
        if (range.cells() == 1) {
            find(attribute("ref"), "one cell merged");
        }
        for (CellRange other : merged) {
            if (other.overlaps(range)) {
                find(attribute("ref"), "merged cells overlap");
            }
        }
        merged.add(range);
    }

    private void validation() throws XMLStreamException {
        String cells = attribute("sqref");
        ranges(cells);
        cell = cells;
        most(
                attribute("promptTitle").length(),
                ExcelLimits.VALIDATION_TITLE,
                "characters in a title");
        most(
                attribute("errorTitle").length(),
                ExcelLimits.VALIDATION_TITLE,
                "characters in a title");
        most(attribute("prompt").length(), ExcelLimits.VALIDATION_TEXT, "characters in a prompt");
        most(attribute("error").length(), ExcelLimits.VALIDATION_TEXT, "characters in a message");
        while (reader.next() != XMLStreamConstants.END_ELEMENT
                || !reader.getLocalName().equals("dataValidation")) {
            if (reader.isStartElement() && reader.getLocalName().startsWith("formula")) {
                String text = reader.getElementText();
                if (text.startsWith("\"")) {
                    most(text.length() - 2, ExcelLimits.VALIDATION_LIST, "characters in a list");
                } else {
                    formula(text);
                }
            }
        }
    }

    private void condition() {
        int priority = number("priority", 0);
        if (priority < 1 || !priorities.add(priority)) {
            find(cell, "priority " + priority + " of a condition is none or occurs twice");
        }
        String format = attribute("dxfId");
        if (!format.isEmpty() && Integer.parseInt(format) >= around.differentialFormats()) {
            find(cell, "format " + format + " of a condition is not there");
        }
    }

    private void hyperlink() {
        hyperlinks++;
        range("hyperlink", attribute("ref"));
        String location = attribute("location");
        boolean target = reader.getAttributeValue(PackageFile.RELATIONSHIPS, "id") != null;
        if (location.isEmpty() && !target) {
            find(attribute("ref"), "link to nowhere");
        } else if (!target) {
            ScannedFormula formula = ScannedFormula.of(location);
            around.formulas()
                    .wrong(location, formula, around.newest())
                    .forEach(each -> find(attribute("ref"), each));
        }
    }

    private void ranges(String list) {
        cell = list;
        for (String each : list.trim().split("\\s+", -1)) {
            range("area", each);
        }
    }

    private CellRange range(String what, String text) {
        return CellRange.parse(text)
                .orElseGet(
                        () -> {
                            find(what, "no cells of a sheet: \"" + text + "\"");
                            return null;
                        });
    }

    private String attribute(String name) {
        String value = reader.getAttributeValue("", name);
        return value == null ? "" : value;
    }

    private int number(String name, int missing) {
        String value = attribute(name);
        return value.isEmpty() ? missing : Integer.parseInt(value);
    }

    private void most(int have, int most, String what) {
        if (have > most) {
            find(cell, have + " " + what + "; at most " + most);
        }
    }

    private void find(String place, String what) {
        findings.accept(new Finding(part, place, what));
    }
}

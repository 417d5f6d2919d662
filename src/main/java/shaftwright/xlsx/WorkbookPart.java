package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shaftwright.book.Area;

/** The workbook part: sheets in tab order and defined names. */
final class WorkbookPart implements PartReader.Walk {
    /** Main namespaces of spreadsheet parts, transitional and strict (ECMA-376 parts 1 and 4). */
    static final String TRANSITIONAL = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    static final String STRICT = "http://purl.oclc.org/ooxml/spreadsheetml/main";

    private final String title;
    private final PartText text;
    private final Map<String, String> relationIds = new LinkedHashMap<>();

    /** As they are, by lower-case name. */
    private final Map<String, String> sheetNames = new HashMap<>();

    /** Found so far; a book names its few sheets in a thousand references. */
    private final Map<String, Optional<String>> sheetsBySpelling = new HashMap<>();

    private final Map<String, Area> names = new LinkedHashMap<>();
    private final Map<String, Area> sheetScoped = new HashMap<>();
    private final Set<String> workbookScoped = new HashSet<>();
    private final Set<String> ambiguous = new HashSet<>();
    private final Set<String> deleted = new HashSet<>();
    private final List<DefinedName> definitions = new ArrayList<>();

    private String prefix = "";
    private int calculation = -1;
    private int calculationEnd = -1;
    private int afterNames = -1;

    private WorkbookPart(String title, PartText text) {
        this.title = title;
        this.text = text;
    }

    static WorkbookPart read(String title, PartText text) {
        WorkbookPart read = new WorkbookPart(title, text);
        PartReader.walk(text, read);
        read.settleNames();
        return read;
    }

    static boolean isMain(String namespace) {
        return namespace.equals(TRANSITIONAL) || namespace.equals(STRICT);
    }

    @Override
    public void over(PartReader reader) {
        if (!reader.name().equals("workbook") || !isMain(reader.namespace())) {
            throw new UnreadableBookException(title, foundRoot(reader), ZipSnapshot.A_WORKBOOK);
        }
        String main = reader.namespace();
        prefix = reader.prefix();
        while (reader.nextChild()) {
            if (reader.is("sheets", main)) {
                readSheets(reader);
                afterNames = reader.end();
            } else if (reader.is("definedNames", main)) {
                readNames(reader);
                afterNames = reader.end();
            } else if (reader.is("calcPr", main)) {
                calculation = reader.start();
                calculationEnd = reader.end();
                reader.skip();
            } else {
                boolean before =
                        reader.is("functionGroups", main) || reader.is("externalReferences", main);
                reader.skip();
                afterNames = before ? reader.end() : afterNames;
            }
        }
    }

    private static String foundRoot(PartReader reader) {
        return switch (reader.name()) {
            case "document" -> "a text document (.docx)";
            case "presentation" -> "a presentation (.pptx)";
            default -> "a package whose main part is a \"" + reader.name() + "\"";
        };
    }

    private void readSheets(PartReader reader) {
        while (reader.nextChild()) {
            String name = reader.attribute("name");
            String id = reader.prefixedAttribute("id");
            if (name == null || id == null) {
                throw reader.damaged("a sheet without name or part", "both");
            }
            if (sheetNames.put(XlsxBook.lowerCase(name), name) != null) {
                throw reader.damaged("two sheets named \"" + name + "\"", "different names");
            }
            relationIds.put(name, id);
            reader.skip();
        }
    }

    private void readNames(PartReader reader) {
        while (reader.nextChild()) {
            String name = reader.attribute("name");
            boolean local = reader.has("localSheetId");
            String sheet = local ? sheetNumbered(reader.whole("localSheetId")) : "";
            String reference = reader.text();
            if (name != null) {
                String lowerCase = XlsxBook.lowerCase(name);
                definitions.add(new DefinedName(lowerCase, sheet, reference));
                addName(lowerCase, reference, local);
            }
        }
    }

    /** The sheet of this number in tab order; empty where there is none. */
    private String sheetNumbered(int number) {
        List<String> sheets = List.copyOf(relationIds.keySet());
        return number >= 0 && number < sheets.size() ? sheets.get(number) : "";
    }

    private void addName(String name, String reference, boolean local) {
        Area area = AreaReference.parse(reference, this);
        if (!local) {
            workbookScoped.add(name);
        }
        if (area == null) {
            // Gnumeric writes ERROR("…") around a reference that it could not read.
            if (reference.contains("#REF!") || reference.startsWith("ERROR(")) {
                deleted.add(name);
            }
        } else if (!local) {
            names.put(name, area);
        } else if (sheetScoped.put(name, area) != null) {
            ambiguous.add(name);
        }
    }

    /** A name that only sheets know still counts where just one sheet has it. */
    private void settleNames() {
        for (Map.Entry<String, Area> name : sheetScoped.entrySet()) {
            if (!workbookScoped.contains(name.getKey()) && !ambiguous.contains(name.getKey())) {
                names.put(name.getKey(), name.getValue());
            }
        }
        deleted.removeAll(names.keySet());
    }

    /** Relationship ids by sheet name, in tab order. */
    Map<String, String> relationIds() {
        return relationIds;
    }

    /** The sheet that formulas spell like this, in quotes or not; empty when there is none. */
    Optional<String> sheet(String spelled) {
        return sheetsBySpelling.computeIfAbsent(
                spelled,
                text ->
                        Optional.ofNullable(
                                sheetNames.get(XlsxBook.lowerCase(AreaReference.sheetName(text)))));
    }

    Map<String, Area> names() {
        return names;
    }

    /** All defined names with what they stand for. */
    List<DefinedName> definitions() {
        return definitions;
    }

    Set<String> deletedNames() {
        return deleted;
    }

    /** What stands before the names of elements, such as {@code x:}; mostly nothing. */
    String prefix() {
        return prefix;
    }

    /** Where the defined names end, or would stand. */
    int afterNames() {
        return afterNames;
    }

    PartText text() {
        return text;
    }

    /** The change that makes spreadsheet programs compute everything when they open the file. */
    Splice computeOnOpening() {
        if (calculation < 0) {
            int at = afterNames;
            return new Splice(at, at, "<" + prefix + "calcPr fullCalcOnLoad=\"1\"/>");
        }
        String tag = text.text(calculation, calculationEnd);
        return new Splice(
                calculation, calculationEnd, TagText.withAttribute(tag, "fullCalcOnLoad", "1"));
    }
}

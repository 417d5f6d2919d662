package shaftwright.validity;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/** Sheets' names and defined names of the workbook part. */
final class WorkbookRules {
    private static final Pattern FORBIDDEN = Pattern.compile("[\\\\/?*\\[\\]:]");
    private static final Pattern NAME = Pattern.compile("[\\p{L}_\\\\][\\p{L}\\d_.\\\\?]*");
    private static final Pattern LIKE_CELL = Pattern.compile("(?i)([A-Z]{1,3})(\\d{1,7})");
    private static final Pattern LIKE_ROW_COLUMN = Pattern.compile("(?i)R\\d*(C\\d*)?|C\\d*");
    private static final String BUILT_IN = "_xlnm.";

    private final PackageFile file;
    private final String part;
    private final Consumer<Finding> findings;

    /** Parts of sheets by name, in order. */
    private final Map<String, String> sheets = new LinkedHashMap<>();

    private final Set<String> names = new HashSet<>();

    WorkbookRules(PackageFile file, String part, Consumer<Finding> findings) {
        this.file = file;
        this.part = part;
        this.findings = findings;
        for (Element sheet : sheetElements()) {
            String id = sheet.getAttributeNS(PackageFile.RELATIONSHIPS, "id");
            for (PackageFile.Relationship each : file.relationships(part)) {
                if (each.id().equals(id)) {
                    sheets.put(sheet.getAttribute("name"), each.target());
                }
            }
        }
        for (Element name : nameElements()) {
            names.add(name.getAttribute("name").toLowerCase(Locale.ROOT));
        }
    }

    Map<String, String> sheets() {
        return sheets;
    }

    /** The rules for formulas in this workbook. */
    FormulaRules formulas() {
        Set<String> sheetNames = new HashSet<>();
        sheets.keySet().forEach(each -> sheetNames.add(each.toLowerCase(Locale.ROOT)));
        return new FormulaRules(names, sheetNames);
    }

    boolean hasName(String name) {
        return names.contains(name.toLowerCase(Locale.ROOT));
    }

    private List<Element> sheetElements() {
        List<Element> found = new ArrayList<>();
        for (Element list : PackageFile.children(file.xml(part), "sheets")) {
            found.addAll(PackageFile.children(list, "sheet"));
        }
        return found;
    }

    private List<Element> nameElements() {
        List<Element> found = new ArrayList<>();
        for (Element list : PackageFile.children(file.xml(part), "definedNames")) {
            found.addAll(PackageFile.children(list, "definedName"));
        }
        return found;
    }

    void check() {
        checkSheets();
        checkNames();
        if (PackageFile.children(file.xml(part), "definedNames").size() > 1) {
            find("definedNames", "occurs twice");
        }
    }

    private void checkSheets() {
        Set<String> seen = new HashSet<>();
        Set<String> ids = new HashSet<>();
        int shown = 0;
        for (Element sheet : sheetElements()) {
            String name = sheet.getAttribute("name");
            if (name.isEmpty() || name.length() > ExcelLimits.SHEET_NAME) {
                find(name, "sheet's name of " + name.length() + " characters");
            }
            if (FORBIDDEN.matcher(name).find() || name.startsWith("'") || name.endsWith("'")) {
                find(name, "sheet's name with a character that Excel forbids");
            }
            if (!seen.add(name.toLowerCase(Locale.ROOT))) {
                find(name, "two sheets of one name");
            }
            if (!ids.add(sheet.getAttribute("sheetId"))) {
                find(name, "two sheets of one number");
            }
            shown += sheet.getAttribute("state").matches("|visible") ? 1 : 0;
        }
        if (shown == 0) {
            find("sheets", "no sheet is shown");
        }
        for (Element view : PackageFile.inside(file.xml(part), "workbookView")) {
            String active = view.getAttribute("activeTab");
            int number = active.isEmpty() ? 0 : Integer.parseInt(active);
            if (number >= sheetElements().size()
                    || !sheetElements().get(number).getAttribute("state").matches("|visible")) {
                find("workbookView", "the active sheet is not shown");
            }
        }
    }

    private void checkNames() {
        Set<String> seen = new HashSet<>();
        FormulaRules rules = formulas();
        for (Element defined : nameElements()) {
            String name = defined.getAttribute("name");
            String scope = defined.getAttribute("localSheetId");
            if (!seen.add(name.toLowerCase(Locale.ROOT) + "/" + scope)) {
                find(name, "two names in one scope");
            }
            if (!scope.isEmpty() && Integer.parseInt(scope) >= sheets.size()) {
                find(name, "scope is no sheet");
            }
            checkName(name);
            String text = defined.getTextContent();
            for (String wrong : rules.wrong(text, ScannedFormula.of(text), FormulaRules.NEWEST)) {
                find(name, wrong);
            }
        }
    }

    private void checkName(String name) {
        if (name.startsWith(BUILT_IN)) {
            return;
        }
        if (name.length() > ExcelLimits.DEFINED_NAME) {
            find(name, "name of " + name.length() + " characters");
        }
        var cell = LIKE_CELL.matcher(name);
        boolean address =
                cell.matches()
                        && CellRange.column(cell.group(1).toUpperCase(Locale.ROOT))
                                <= ExcelLimits.COLUMNS
                        && Integer.parseInt(cell.group(2)) <= ExcelLimits.ROWS;
        if (!NAME.matcher(name).matches() || address || LIKE_ROW_COLUMN.matcher(name).matches()) {
            find(name, "is no name that Excel allows");
        }
    }

    private void find(String place, String what) {
        findings.accept(new Finding(part, place, what));
    }
}

package shaftwright.validity;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/** What charts refer to, and the points that they keep of it. */
final class ChartRules {
    private static final Pattern AREA = Pattern.compile("('(?:[^']|'')+'|[^'!]+)!(.+)");

    private final PackageFile file;
    private final WorkbookRules workbook;
    private final Consumer<Finding> findings;
    private final Map<String, String> sheets = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

    ChartRules(PackageFile file, WorkbookRules workbook, Consumer<Finding> findings) {
        this.file = file;
        this.workbook = workbook;
        this.findings = findings;
        sheets.putAll(workbook.sheets());
    }

    void check(String part) {
        for (Element formula : PackageFile.inside(file.xml(part), "f")) {
            String text = formula.getTextContent();
            Matcher area = AREA.matcher(text);
            boolean plain = area.matches();
            if (!plain || !sheets.containsKey(unquoted(area.group(1)))) {
                if (!workbook.hasName(text.substring(text.indexOf('!') + 1))) {
                    find(part, text, "refers to no sheet and no name");
                }
                continue;
            }
            CellRange range = CellRange.parse(area.group(2)).orElse(null);
            if (range == null) {
                boolean named = workbook.hasName(area.group(2)) || text.startsWith("(");
                if (!named) {
                    find(part, text, "is no area of a sheet");
                }
                continue;
            }
            for (String cache : List.of("numCache", "strCache")) {
                for (Element kept :
                        PackageFile.children((Element) formula.getParentNode(), cache)) {
                    checkCache(part, text, kept, range.cells());
                }
            }
        }
    }

    private void checkCache(String part, String place, Element cache, int cells) {
        for (Element count : PackageFile.children(cache, "ptCount")) {
            if (Integer.parseInt(count.getAttribute("val")) != cells) {
                find(part, place, "keeps " + count.getAttribute("val") + " points of " + cells);
            }
        }
        int last = -1;
        for (Element point : PackageFile.children(cache, "pt")) {
            int index = Integer.parseInt(point.getAttribute("idx"));
            if (index <= last || index >= cells) {
                find(part, place, "point " + index + " after " + last + " of " + cells);
            }
            last = index;
            boolean numbers = cache.getLocalName().toLowerCase(Locale.ROOT).startsWith("num");
            for (Element value : PackageFile.children(point, "v")) {
                if (numbers && !isNumber(value.getTextContent())) {
                    find(
                            part,
                            place,
                            "point " + index + " is no number: " + value.getTextContent());
                }
            }
        }
    }

    /** Excel itself keeps #N/A as a point's text. */
    private static boolean isNumber(String text) {
        if (text.equals("#N/A")) {
            return true;
        }
        try {
            return !Double.isNaN(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private static String unquoted(String sheet) {
        return sheet.startsWith("'")
                ? sheet.substring(1, sheet.length() - 1).replace("''", "'")
                : sheet;
    }

    private void find(String part, String place, String what) {
        findings.accept(new Finding(part, place, what));
    }
}

package shaftwright.validity;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.w3c.dom.Element;

/** Cell formats: how many there are, and that what they refer to is there. */
final class StyleRules {
    /** Numbers below are Excel's own formats. */
    private static final int FIRST_OWN_FORMAT = 164;

    private final Element styles;
    private final String part;
    private final Consumer<Finding> findings;

    StyleRules(PackageFile file, String part, Consumer<Finding> findings) {
        styles = file.xml(part);
        this.part = part;
        this.findings = findings;
    }

    int cellFormats() {
        return list("cellXfs", "xf").size();
    }

    int differentialFormats() {
        return list("dxfs", "dxf").size();
    }

    private List<Element> list(String name, String item) {
        return PackageFile.children(styles, name).stream()
                .flatMap(each -> PackageFile.children(each, item).stream())
                .toList();
    }

    void check() {
        most(cellFormats(), ExcelLimits.CELL_FORMATS, "cell formats");
        most(list("fonts", "font").size(), ExcelLimits.FONTS, "fonts");
        List<Element> formats = list("numFmts", "numFmt");
        most(formats.size(), ExcelLimits.NUMBER_FORMATS, "number formats");
        Set<String> numbers = new HashSet<>();
        for (Element format : formats) {
            if (!numbers.add(format.getAttribute("numFmtId"))) {
                find("numFmt", "two formats of number " + format.getAttribute("numFmtId"));
            }
            most(
                    format.getAttribute("formatCode").length(),
                    ExcelLimits.FORMAT_CHARACTERS,
                    "characters in a number format");
        }
        int parents = list("cellStyleXfs", "xf").size();
        for (String name : List.of("cellStyleXfs", "cellXfs")) {
            int number = 0;
            for (Element xf : list(name, "xf")) {
                String place = name + " " + number++;
                refers(place, xf, "fontId", list("fonts", "font").size());
                refers(place, xf, "fillId", list("fills", "fill").size());
                refers(place, xf, "borderId", list("borders", "border").size());
                if (name.equals("cellXfs")) {
                    refers(place, xf, "xfId", parents);
                }
                String format = xf.getAttribute("numFmtId");
                if (!format.isEmpty()
                        && Integer.parseInt(format) >= FIRST_OWN_FORMAT
                        && !numbers.contains(format)) {
                    find(place, "no number format " + format);
                }
            }
        }
        for (Element style : list("cellStyles", "cellStyle")) {
            refers("cellStyle " + style.getAttribute("name"), style, "xfId", parents);
        }
    }

    private void refers(String place, Element element, String attribute, int count) {
        String value = element.getAttribute(attribute);
        if (!value.isEmpty() && Integer.parseInt(value) >= count) {
            find(place, attribute + " " + value + " of " + count);
        }
    }

    private void most(int have, int most, String what) {
        if (have > most) {
            find("", have + " " + what + "; at most " + most);
        }
    }

    private void find(String place, String what) {
        findings.accept(new Finding(part, place, what));
    }
}

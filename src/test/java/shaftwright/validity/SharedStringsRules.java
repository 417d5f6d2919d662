package shaftwright.validity;

import java.util.List;
import java.util.function.Consumer;
import org.w3c.dom.Element;

/** Texts of cells: their length, and that spaces at their ends survive. */
final class SharedStringsRules {
    private static final String XML = "http://www.w3.org/XML/1998/namespace";

    private final Element strings;
    private final String part;
    private final Consumer<Finding> findings;

    SharedStringsRules(PackageFile file, String part, Consumer<Finding> findings) {
        strings = file.xml(part);
        this.part = part;
        this.findings = findings;
    }

    int count() {
        return PackageFile.children(strings, "si").size();
    }

    void check() {
        String unique = strings.getAttribute("uniqueCount");
        if (!unique.isEmpty() && Integer.parseInt(unique) != count()) {
            findings.accept(new Finding(part, "", unique + " strings said, " + count() + " there"));
        }
        int number = 0;
        for (Element string : PackageFile.children(strings, "si")) {
            String place = "string " + number++;
            List<Element> texts = PackageFile.inside(string, "t");
            int length = 0;
            for (Element text : texts) {
                length += text.getTextContent().length();
                checkSpaces(
                        part,
                        place,
                        text.getTextContent(),
                        text.getAttributeNS(XML, "space"),
                        findings);
            }
            checkLength(part, place, length, findings);
        }
    }

    static void checkLength(String part, String place, int length, Consumer<Finding> findings) {
        if (length > ExcelLimits.CELL_CHARACTERS) {
            findings.accept(new Finding(part, place, length + " characters in a cell"));
        }
    }

    /** XML 1.0, 2.10: without the attribute a program may drop them. */
    static void checkSpaces(
            String part, String place, String text, String space, Consumer<Finding> findings) {
        if (!text.equals(text.strip()) && !space.equals("preserve")) {
            findings.accept(
                    new Finding(
                            part, place, "space at an end without xml:space: \"" + text + "\""));
        }
    }
}

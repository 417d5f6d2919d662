package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Formulas under names in the workbook part: put in, or taken out again so that the part is as it
 * was, byte for byte; only an element for names that held none is gone.
 */
public final class NamedFormulas {
    /** What tells such a name from one of the builder's own. LibreOffice makes it small letters. */
    private static final String LAMBDA = "_xlfn.lambda(";

    /** Gnumeric writes this around a formula that it cannot read. */
    private static final String UNREAD = "error(\"";

    private final String prefix;
    private final Map<String, String> wanted;

    private NamedFormulas(String prefix, Map<String, String> wanted) {
        this.prefix = XlsxBook.lowerCase(prefix);
        this.wanted = new LinkedHashMap<>(wanted);
    }

    /**
     * Puts formulas in; those that are there under these names are replaced.
     *
     * @param prefix what all names begin with
     * @param formulas LAMBDA formulas by name, as files store them
     */
    public static NamedFormulas in(String prefix, Map<String, String> formulas) {
        return new NamedFormulas(prefix, formulas);
    }

    /** Takes all LAMBDA formulas out whose names begin so. */
    public static NamedFormulas out(String prefix) {
        return new NamedFormulas(prefix, Map.of());
    }

    /** Number of formulas that are put in. */
    public int count() {
        return wanted.size();
    }

    /** Changes of the workbook part; none when it is already as wanted. */
    List<Splice> splices(WorkbookPart workbook) {
        PartText text = workbook.text();
        List<Splice> splices = new ArrayList<>();
        Found found = found(text);
        if (sameAsWanted(found)) {
            return splices;
        }
        for (Name name : found.ours) {
            splices.add(new Splice(name.start, name.end, ""));
        }
        if (wanted.isEmpty()) {
            if (found.others == 0) {
                // Most parts had no such element before.
                splices.clear();
                splices.add(new Splice(found.start, found.end, ""));
            }
            return splices;
        }
        if (found.hasRoom) {
            splices.add(new Splice(found.close, found.close, elements(workbook.prefix())));
        } else {
            String tag = workbook.prefix() + "definedNames>";
            int from = found.isThere() ? found.start : workbook.afterNames();
            int to = found.isThere() ? found.end : from;
            splices.add(new Splice(from, to, "<" + tag + elements(workbook.prefix()) + "</" + tag));
        }
        return splices;
    }

    private boolean sameAsWanted(Found found) {
        Map<String, String> there = new LinkedHashMap<>();
        for (Name name : found.ours) {
            there.put(name.name, name.formula);
        }
        return there.equals(wanted);
    }

    private String elements(String elementPrefix) {
        StringBuilder xml = new StringBuilder();
        for (Map.Entry<String, String> formula : wanted.entrySet()) {
            xml.append('<').append(elementPrefix).append("definedName name=\"");
            xml.append(formula.getKey()).append("\">");
            XmlText.encode(xml, formula.getValue());
            xml.append("</").append(elementPrefix).append("definedName>");
        }
        return xml.toString();
    }

    /** One name of ours in a part. */
    private record Name(String name, String formula, int start, int end) {}

    /** The names of a part. */
    private static final class Found {
        private final List<Name> ours = new ArrayList<>();
        private int others;

        /** An element that closes itself has none. */
        private boolean hasRoom;

        private int start = -1;
        private int close = -1;
        private int end = -1;

        boolean isThere() {
            return start >= 0;
        }
    }

    private Found found(PartText text) {
        Found found = new Found();
        PartReader.walk(
                text,
                reader -> {
                    while (reader.nextChild()) {
                        if (reader.name().equals("definedNames")) {
                            found.start = reader.start();
                            found.hasRoom = !reader.isEmpty();
                            readNames(reader, found);
                            found.close = reader.start();
                            found.end = reader.end();
                        } else {
                            reader.skip();
                        }
                    }
                });
        return found;
    }

    private void readNames(PartReader reader, Found found) {
        while (reader.nextChild()) {
            int start = reader.start();
            String name = reader.attribute("name");
            String formula = reader.text();
            if (name != null && concerns(name, formula)) {
                found.ours.add(new Name(name, formula, start, reader.end()));
            } else {
                found.others++;
                refuseTaken(reader, name);
            }
        }
    }

    /** Whether these are put in, or taken out, under such a name. */
    public boolean concerns(String name, String formula) {
        return XlsxBook.lowerCase(name).startsWith(prefix) && isLambda(XlsxBook.lowerCase(formula));
    }

    private static boolean isLambda(String formula) {
        return formula.startsWith(LAMBDA) || formula.startsWith(UNREAD + LAMBDA);
    }

    private void refuseTaken(PartReader reader, String name) {
        for (String each : wanted.keySet()) {
            if (each.equalsIgnoreCase(name)) {
                throw reader.damaged(
                        "a name " + name + " of your own", "no such name: rename it first");
            }
        }
    }
}

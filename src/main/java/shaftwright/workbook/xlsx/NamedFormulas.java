package shaftwright.workbook.xlsx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Formulas under names in the workbook part: put in, or taken out again so that the part is as it
 * was, byte for byte.
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
                // The part had no such element before: an empty one is not allowed.
                splices.clear();
                splices.add(new Splice(found.start, found.end, ""));
            }
            return splices;
        }
        if (found.isThere()) {
            splices.add(new Splice(found.close, found.close, elements(workbook.prefix())));
        } else {
            String tag = workbook.prefix() + "definedNames>";
            int at = workbook.afterNames();
            splices.add(new Splice(at, at, "<" + tag + elements(workbook.prefix()) + "</" + tag));
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
        private int start = -1;
        private int close = -1;
        private int end = -1;

        /** An element that closes itself holds nothing and has no room. */
        boolean isThere() {
            return close > start;
        }
    }

    private Found found(PartText text) {
        Found found = new Found();
        PartReader.walk(
                text,
                reader -> {
                    while (reader.nextChild()) {
                        if (reader.name().equals("definedNames") && !reader.isEmpty()) {
                            found.start = reader.start();
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
            boolean named = name != null && XlsxBook.lowerCase(name).startsWith(prefix);
            if (named && isLambda(XlsxBook.lowerCase(formula))) {
                found.ours.add(new Name(name, formula, start, reader.end()));
            } else {
                found.others++;
                refuseTaken(reader, name);
            }
        }
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

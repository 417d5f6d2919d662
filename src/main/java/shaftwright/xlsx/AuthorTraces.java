package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where a workbook's package names who wrote it: the document's properties, the authors of notes,
 * the persons of threaded comments, the folder it was saved in (which often holds the user's name)
 * and who reserved it. The words of a note are the builder's and stay, also where a program put a
 * name before them.
 */
final class AuthorTraces {
    private static final List<String> PROPERTIES =
            List.of("creator", "lastModifiedBy", "Company", "Manager");

    private static final Map<String, List<String>> PERSON =
            Map.of("person", List.of("displayName", "userId"));

    private static final Map<String, List<String>> WORKBOOK =
            Map.of("absPath", List.of("url"), "fileSharing", List.of("userName"));

    private final Map<PartText, List<Splice>> found = new LinkedHashMap<>();
    private int count;

    private AuthorTraces() {}

    /** Those of a package with this main part that are not empty. */
    static AuthorTraces in(String title, ZipSnapshot zip, String main) {
        AuthorTraces traces = new AuthorTraces();
        for (ZipEntryRecord entry : zip.entries()) {
            String name = XlsxBook.lowerCase(entry.name());
            boolean properties =
                    name.endsWith(".psmdcp")
                            || (name.startsWith("docprops/") && name.endsWith(".xml"));
            boolean notes = name.contains("comments") && name.endsWith(".xml");
            boolean persons = name.contains("persons/") && name.endsWith(".xml");
            boolean workbook = entry.name().equals(main);
            if (properties || notes || persons || workbook) {
                PartText part = zip.text(entry);
                List<Splice> splices = new ArrayList<>();
                PartReader.walk(
                        part,
                        reader -> {
                            if (properties) {
                                properties(reader, splices);
                            } else if (persons) {
                                attributes(part, reader, splices, PERSON);
                            } else if (workbook) {
                                attributes(part, reader, splices, WORKBOOK);
                            } else {
                                notes(reader, splices);
                            }
                        });
                if (!splices.isEmpty()) {
                    traces.count += splices.size();
                    traces.found.put(part, splices);
                }
            }
        }
        return traces;
    }

    /** How many there are. */
    int count() {
        return count;
    }

    /** What takes them out, by part. */
    Map<PartText, List<Splice>> found() {
        return found;
    }

    private static void properties(PartReader reader, List<Splice> splices) {
        while (reader.nextChild()) {
            if (PROPERTIES.contains(reader.name())) {
                empty(reader, splices);
            } else {
                reader.skip();
            }
        }
    }

    private static void notes(PartReader reader, List<Splice> splices) {
        while (reader.nextChild()) {
            if (reader.name().equals("authors")) {
                while (reader.nextChild()) {
                    empty(reader, splices);
                }
            } else {
                reader.skip();
            }
        }
    }

    private static void empty(PartReader reader, List<Splice> splices) {
        if (reader.isEmpty()) {
            reader.skip();
            return;
        }
        int from = reader.end();
        String text = reader.text();
        if (!text.isEmpty()) {
            splices.add(new Splice(from, reader.start(), ""));
        }
    }

    /** Empties attributes; comments point to their person by its id, which tells nothing. */
    private static void attributes(
            PartText part, PartReader reader, List<Splice> splices, Map<String, List<String>> of) {
        while (reader.nextChild()) {
            List<String> names = of.get(reader.name());
            if (names != null) {
                String tag = part.text(reader.start(), reader.end());
                String cleared = tag;
                for (String name : names) {
                    if (TagText.attribute(tag, name) != null) {
                        cleared = TagText.withAttribute(cleared, name, "");
                    }
                }
                if (!cleared.equals(tag)) {
                    splices.add(new Splice(reader.start(), reader.end(), cleared));
                }
            }
            attributes(part, reader, splices, of);
        }
    }
}

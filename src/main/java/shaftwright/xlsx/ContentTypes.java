package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The package's list of what its parts are (ECMA-376 part 2, 10.1.2); parts may have any name.
 * Names of parts, extensions and types are the same in upper and lower case.
 */
final class ContentTypes implements PartReader.Walk {
    /** Where the list is. */
    static final String PART = "[Content_Types].xml";

    /** The last word of a type, after all that writers and strict files differ in. */
    static final String WORKBOOK = "main+xml";

    static final String WORKSHEET = "worksheet+xml";
    static final String STYLES = "styles+xml";
    static final String SHARED_STRINGS = "sharedstrings+xml";
    static final String SIGNATURE = "digital-signature-xmlsignature+xml";

    private static final String CHART =
            "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";
    private static final String EXTENDED_CHART = "application/vnd.ms-office.chartex+xml";

    private static final String DRAWING =
            "application/vnd.openxmlformats-officedocument.drawing+xml";

    private final List<String> charts = new ArrayList<>();
    private final List<String> drawings = new ArrayList<>();
    private final Map<String, String> byPart = new LinkedHashMap<>();
    private final Map<String, String> byExtension = new LinkedHashMap<>();

    private ContentTypes() {}

    /** Reads the list; where there is none, no part is anything. */
    static ContentTypes of(ZipSnapshot zip) {
        ContentTypes types = new ContentTypes();
        ZipEntryRecord entry = zip.find(PART);
        if (entry != null) {
            PartReader.walk(zip.text(entry), types);
        }
        return types;
    }

    /** Names of the parts that are charts. */
    List<String> charts() {
        return charts;
    }

    /** Names of the parts that hold what lies over a sheet. */
    List<String> drawings() {
        return drawings;
    }

    /** Whether a part is listed as something whose type ends in this word. */
    boolean says(String part, String type) {
        String key = part.toLowerCase(Locale.ROOT);
        String extension = key.substring(key.lastIndexOf('.') + 1);
        String listed = byPart.getOrDefault(key, byExtension.getOrDefault(extension, ""));
        return listed.endsWith(type);
    }

    @Override
    public void over(PartReader reader) {
        while (reader.nextChild()) {
            String type = reader.attribute("ContentType");
            String part = reader.attribute("PartName");
            String extension = reader.attribute("Extension");
            if (type != null && part != null) {
                String name = part.startsWith("/") ? part.substring(1) : part;
                byPart.put(name.toLowerCase(Locale.ROOT), type.toLowerCase(Locale.ROOT));
                if (CHART.equals(type) || EXTENDED_CHART.equals(type)) {
                    charts.add(name);
                } else if (DRAWING.equals(type)) {
                    drawings.add(name);
                }
            } else if (type != null && extension != null) {
                byExtension.put(extension.toLowerCase(Locale.ROOT), type.toLowerCase(Locale.ROOT));
            }
            reader.skip();
        }
    }
}

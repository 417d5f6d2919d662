package shaftwright.template;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackageRelationshipCollection;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFGraphicFrame;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What of a sheet is a part of its own in the package: charts, pictures, tables and the like. */
final class PackageParts {
    /** One of which it is not known what it holds. */
    private static final String DRAWING = "drawing";

    private PackageParts() {}

    /**
     * Says which parts of a sheet are not in its renewal.
     *
     * @param copyOrNull the renewed sheet of the tool, which has charts and pictures of its own
     */
    static void missing(XSSFSheet sheet, XSSFSheet copyOrNull, Consumer<String> left) {
        Map<String, Integer> there = copyOrNull == null ? Map.of() : count(copyOrNull);
        Map<String, Integer> before = count(sheet);
        if (copyOrNull != null) {
            before.remove(DRAWING);
        }
        for (Map.Entry<String, Integer> part : before.entrySet()) {
            int missing = part.getValue() - there.getOrDefault(part.getKey(), 0);
            if (missing > 0) {
                left.accept(
                        missing
                                + " "
                                + part.getKey()
                                + (missing == 1 ? "" : "s")
                                + " on sheet \""
                                + sheet.getSheetName()
                                + "\"");
            }
        }
    }

    private static Map<String, Integer> count(XSSFSheet sheet) {
        Map<String, Integer> parts = new TreeMap<>();
        for (PackageRelationship relation : relations(sheet)) {
            if (sheet.getRelationById(relation.getId()) instanceof XSSFDrawing drawing) {
                add(parts, "chart", drawing.getCharts().size());
                for (XSSFShape shape : drawing.getShapes()) {
                    add(parts, "picture or shape", shape instanceof XSSFGraphicFrame ? 0 : 1);
                }
                continue;
            }
            String type = relation.getRelationshipType();
            switch (type.substring(type.lastIndexOf('/') + 1)) {
                case "drawing" -> add(parts, DRAWING, 1);
                case "pivotTable" -> add(parts, "pivot table", 1);
                case "table" -> add(parts, "Excel table", 1);
                case "threadedComment" -> add(parts, "thread of comments", 1);
                case "oleObject", "package" -> add(parts, "embedded object", 1);
                case "ctrlProp", "control" -> add(parts, "form control", 1);
                case "slicer", "timeline" -> add(parts, "slicer", 1);
                default -> {}
            }
        }
        return parts;
    }

    /** Those to parts that were not opened among them. */
    private static PackageRelationshipCollection relations(XSSFSheet sheet) {
        try {
            return sheet.getPackagePart().getRelationships();
        } catch (InvalidFormatException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static void add(Map<String, Integer> parts, String word, int count) {
        if (count > 0) {
            parts.merge(word, count, Integer::sum);
        }
    }
}

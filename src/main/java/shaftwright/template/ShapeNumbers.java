package shaftwright.template;

import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlObject;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;

/**
 * Numbers of charts, groups and shapes, each once in its drawing (ECMA-376 part 1, 20.5.2.8). POI
 * gives all shapes of a group the same one.
 */
final class ShapeNumbers {
    private static final String EVERY_SHAPE =
            "declare namespace xdr="
                    + "'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing'"
                    + " .//xdr:cNvPr";

    private ShapeNumbers() {}

    static void set(XSSFWorkbook workbook) {
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            XSSFSheet sheet = workbook.getSheetAt(i);
            XSSFDrawing drawing = sheet.getDrawingPatriarch();
            if (drawing != null) {
                number(drawing);
            }
        }
    }

    private static void number(XSSFDrawing drawing) {
        int number = 1;
        for (XmlObject shape : drawing.getCTDrawing().selectPath(EVERY_SHAPE)) {
            ((CTNonVisualDrawingProps) shape).setId(number++);
        }
    }
}

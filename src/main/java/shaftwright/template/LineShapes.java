package shaftwright.template;

import java.awt.Color;
import org.apache.poi.ss.usermodel.ShapeTypes;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.TextAlign;
import org.apache.poi.xssf.usermodel.XSSFChildAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.apache.poi.xssf.usermodel.XSSFTextParagraph;
import org.apache.poi.xssf.usermodel.XSSFTextRun;
import org.openxmlformats.schemas.drawingml.x2006.main.CTLineProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.STLineEndType;

/**
 * A picture of shapes with black lines over rows of a sheet, in points of its own, to the right and
 * downward from its upper left corner. It grows and shrinks with the rows and columns below it.
 */
final class LineShapes {
    static final double THIN = 0.75;
    static final double PLAIN = 1.25;
    static final double HEAVY = 2.25;
    static final int SOLID = 0;
    static final int DASHED = 3;

    private final XSSFShapeGroup group;

    /** A picture so many points wide and high over rows from the top to before the bottom one. */
    LineShapes(XSSFSheet sheet, int top, int bottom, int columns, int width, int height) {
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        group = drawing.createGroup(drawing.createAnchor(0, 0, 0, 0, 0, top, columns, bottom));
        group.setCoordinates(0, 0, emu(width), emu(height));
    }

    private static int emu(int points) {
        return points * Units.EMU_PER_POINT;
    }

    void rectangle(int left, int top, int width, int height) {
        shape(ShapeTypes.RECT, left, top, width, height, PLAIN, SOLID);
    }

    /** A bush or ball joint. */
    void joint(int x, int y) {
        shape(ShapeTypes.ELLIPSE, x - 4, y - 4, 8, 8, PLAIN, SOLID);
    }

    void box(int left, int top, int width, int height, String text) {
        XSSFSimpleShape box = shape(ShapeTypes.RECT, left, top, width, height, PLAIN, 0);
        box.setText(text);
        text(box);
    }

    private XSSFSimpleShape shape(
            int type, int left, int top, int width, int height, double weight, int dash) {
        XSSFSimpleShape shape =
                group.createSimpleShape(
                        new XSSFChildAnchor(
                                emu(left), emu(top), emu(left + width), emu(top + height)));
        shape.setShapeType(type);
        shape.setNoFill(true);
        shape.setLineStyleColor(0, 0, 0);
        shape.setLineWidth(weight);
        if (dash > 0) {
            shape.setLineStyle(dash);
        }
        return shape;
    }

    XSSFSimpleShape line(int x1, int y1, int x2, int y2, double weight, int dash) {
        XSSFSimpleShape line =
                shape(
                        ShapeTypes.LINE,
                        Math.min(x1, x2),
                        Math.min(y1, y2),
                        Math.abs(x2 - x1),
                        Math.abs(y2 - y1),
                        weight,
                        dash);
        if ((x2 - x1) * (y2 - y1) < 0) {
            line.getCTShape().getSpPr().getXfrm().setFlipV(true);
        }
        return line;
    }

    /** A line with an arrow at both ends and what it is beside the middle. */
    void span(int x1, int y1, int x2, int y2, String what, int right, int down) {
        int width = 11 + 7 * what.length();
        XSSFSimpleShape line = line(x1, y1, x2, y2, PLAIN, SOLID);
        CTLineProperties properties = line.getCTShape().getSpPr().getLn();
        properties.addNewHeadEnd().setType(STLineEndType.TRIANGLE);
        properties.addNewTailEnd().setType(STLineEndType.TRIANGLE);
        XSSFTextRun run =
                words((x1 + x2) / 2 + right, (y1 + y2) / 2 + down, width, what)
                        .getTextParagraphs()
                        .get(0)
                        .getTextRuns()
                        .get(0);
        run.setBold(true);
        run.setFontSize(12);
    }

    void arrowUp(int x, int top, int bottom) {
        line(x, top, x, bottom, PLAIN, SOLID)
                .getCTShape()
                .getSpPr()
                .getLn()
                .addNewHeadEnd()
                .setType(STLineEndType.TRIANGLE);
    }

    XSSFSimpleShape words(int left, int top, int width, String text) {
        XSSFSimpleShape shape = shape(ShapeTypes.RECT, left, top, width, 18, 0, SOLID);
        shape.getCTShape().getSpPr().unsetLn();
        shape.setText(text);
        text(shape);
        return shape;
    }

    /** A line of a list, from its left end on. */
    void listed(int left, int top, int width, String text) {
        words(left, top, width, text).getTextParagraphs().get(0).setTextAlign(TextAlign.LEFT);
    }

    private static void text(XSSFSimpleShape shape) {
        shape.setVerticalAlignment(VerticalAlignment.CENTER);
        shape.setLeftInset(0);
        shape.setRightInset(0);
        shape.setTopInset(0);
        shape.setBottomInset(0);
        shape.setWordWrap(false);
        XSSFTextParagraph paragraph = shape.getTextParagraphs().get(0);
        paragraph.setTextAlign(TextAlign.CENTER);
        XSSFTextRun run = paragraph.getTextRuns().get(0);
        run.setFontSize(9);
        run.setFontFamily(Look.FONT, (byte) 0, (byte) 0, false);
        run.setFontColor(Color.BLACK);
    }
}

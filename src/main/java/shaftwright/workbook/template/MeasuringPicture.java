package shaftwright.workbook.template;

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
 * Both sides of the vehicle from behind, with what a tape reads from where to where. Drawn in
 * shapes of black lines, in points of a sheet 640 wide and 300 high; the right side mirrors the
 * left.
 */
final class MeasuringPicture {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 300;
    private static final int CENTRE = WIDTH / 2;
    private static final int FLOOR = 262;
    private static final int INNER_OUT = 62;
    private static final int INNER_UP = 142;
    private static final int OUTER_OUT = 218;
    private static final int OUTER_UP = 172;
    private static final int HUB_OUT = 246;
    private static final double THIN = 0.75;
    private static final double PLAIN = 1.25;
    private static final double HEAVY = 2.25;
    private static final int DASHED = 3;

    private final XSSFShapeGroup group;

    MeasuringPicture(XSSFSheet sheet, int top, int bottom, int columns) {
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        group = drawing.createGroup(drawing.createAnchor(0, 0, 0, 0, 0, top, columns, bottom));
        group.setCoordinates(0, 0, emu(WIDTH), emu(HEIGHT));
    }

    private static int emu(int points) {
        return points * Units.EMU_PER_POINT;
    }

    void draw() {
        line(8, FLOOR, WIDTH - 8, FLOOR, HEAVY, 0);
        words(WIDTH - 150, FLOOR + 4, 150, "one level floor");
        line(CENTRE, 14, CENTRE, 104, THIN, DASHED);
        line(CENTRE, 180, CENTRE, FLOOR, THIN, DASHED);
        words(CENTRE - 70, 0, 140, "vehicle's centre plane");
        box(CENTRE - 46, 104, 92, 76, "transaxle");
        side(-1, "left");
        side(1, "right");
        span(CENTRE + 24, 180, CENTRE + 24, FLOOR, "G", 6, -8);
    }

    /** One side; the left one stands on the left of a picture taken from behind. */
    private void side(int outward, String word) {
        int inner = CENTRE + outward * INNER_OUT;
        int outer = CENTRE + outward * OUTER_OUT;
        int hub = CENTRE + outward * HUB_OUT;
        bar(CENTRE + outward * 46, INNER_UP, inner, 12);
        bar(outer, OUTER_UP, hub, 12);
        line(inner, INNER_UP - 22, inner, INNER_UP + 22, HEAVY, 0);
        line(outer, OUTER_UP - 22, outer, OUTER_UP + 22, HEAVY, 0);
        line(hub, OUTER_UP - 26, hub, OUTER_UP + 26, HEAVY, 0);
        box(outward < 0 ? hub - 44 : hub, 84, 44, FLOOR - 84, "wheel");
        span(inner, INNER_UP, outer, OUTER_UP, "C", -8, -24);
        span(inner, INNER_UP + 26, inner, FLOOR, "A", outward < 0 ? -22 : 4, -8);
        span(outer, OUTER_UP + 26, outer, FLOOR, "B", outward < 0 ? 4 : -22, -8);
        line(inner, 40, inner, INNER_UP - 22, THIN, DASHED);
        span(CENTRE, 48, inner, 48, "D", -8, -20);
        line(outer, 60, outer, OUTER_UP - 22, THIN, DASHED);
        line(hub, 60, hub, OUTER_UP - 26, THIN, DASHED);
        span(outer, 70, hub, 70, "E", -8, -20);
        words(outward < 0 ? outer - 60 : outer - 80, 24, 140, word + " side");
        words(inner + (outward < 0 ? -96 : -4), INNER_UP - 44, 100, "inner datum face");
        words(outer + (outward < 0 ? -4 : -96), OUTER_UP - 56, 100, "outer datum face");
        words(outward < 0 ? inner - 106 : inner + 6, FLOOR + 4, 110, "F: fore-aft, from above");
    }

    private void bar(int from, int up, int to, int thick) {
        shape(
                ShapeTypes.RECT,
                Math.min(from, to),
                up - thick / 2,
                Math.abs(to - from),
                thick,
                PLAIN,
                0);
    }

    private void box(int left, int top, int width, int height, String text) {
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

    private XSSFSimpleShape line(int x1, int y1, int x2, int y2, double weight, int dash) {
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

    /** A line with an arrow at both ends and its letter beside the middle. */
    private void span(int x1, int y1, int x2, int y2, String letter, int right, int down) {
        XSSFSimpleShape line = line(x1, y1, x2, y2, PLAIN, 0);
        CTLineProperties properties = line.getCTShape().getSpPr().getLn();
        properties.addNewHeadEnd().setType(STLineEndType.TRIANGLE);
        properties.addNewTailEnd().setType(STLineEndType.TRIANGLE);
        XSSFTextRun run =
                words((x1 + x2) / 2 + right, (y1 + y2) / 2 + down, 18, letter)
                        .getTextParagraphs()
                        .get(0)
                        .getTextRuns()
                        .get(0);
        run.setBold(true);
        run.setFontSize(12);
    }

    private XSSFSimpleShape words(int left, int top, int width, String text) {
        XSSFSimpleShape shape = shape(ShapeTypes.RECT, left, top, width, 18, 0, 0);
        shape.getCTShape().getSpPr().unsetLn();
        shape.setText(text);
        text(shape);
        return shape;
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
        run.setFontColor(Color.BLACK);
    }
}

package shaftwright.template;

import org.apache.poi.xssf.usermodel.XSSFSheet;

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
    private final LineShapes shapes;

    MeasuringPicture(XSSFSheet sheet, int top, int bottom, int columns) {
        shapes = new LineShapes(sheet, top, bottom, columns, WIDTH, HEIGHT);
    }

    void draw() {
        shapes.line(8, FLOOR, WIDTH - 8, FLOOR, LineShapes.HEAVY, LineShapes.SOLID);
        shapes.words(WIDTH - 150, FLOOR + 4, 150, "one level floor");
        shapes.line(CENTRE, 14, CENTRE, 104, LineShapes.THIN, LineShapes.DASHED);
        shapes.line(CENTRE, 180, CENTRE, FLOOR, LineShapes.THIN, LineShapes.DASHED);
        shapes.words(CENTRE - 70, 0, 140, "vehicle's centre plane");
        shapes.box(CENTRE - 46, 104, 92, 76, "transaxle");
        side(-1, "left");
        side(1, "right");
        shapes.span(CENTRE + 24, 180, CENTRE + 24, FLOOR, "G", 6, -8);
    }

    /** One side; the left one stands on the left of a picture taken from behind. */
    private void side(int outward, String word) {
        int inner = CENTRE + outward * INNER_OUT;
        int outer = CENTRE + outward * OUTER_OUT;
        int hub = CENTRE + outward * HUB_OUT;
        bar(CENTRE + outward * 46, INNER_UP, inner, 12);
        bar(outer, OUTER_UP, hub, 12);
        shapes.line(inner, INNER_UP - 22, inner, INNER_UP + 22, LineShapes.HEAVY, LineShapes.SOLID);
        shapes.line(outer, OUTER_UP - 22, outer, OUTER_UP + 22, LineShapes.HEAVY, LineShapes.SOLID);
        shapes.line(hub, OUTER_UP - 26, hub, OUTER_UP + 26, LineShapes.HEAVY, LineShapes.SOLID);
        shapes.box(outward < 0 ? hub - 44 : hub, 84, 44, FLOOR - 84, "wheel");
        shapes.span(inner, INNER_UP, outer, OUTER_UP, "C", -8, -24);
        shapes.span(inner, INNER_UP + 26, inner, FLOOR, "A", outward < 0 ? -22 : 4, -8);
        shapes.span(outer, OUTER_UP + 26, outer, FLOOR, "B", outward < 0 ? 4 : -22, -8);
        shapes.line(inner, 40, inner, INNER_UP - 22, LineShapes.THIN, LineShapes.DASHED);
        shapes.span(CENTRE, 48, inner, 48, "D", -8, -20);
        shapes.line(outer, 60, outer, OUTER_UP - 22, LineShapes.THIN, LineShapes.DASHED);
        shapes.line(hub, 60, hub, OUTER_UP - 26, LineShapes.THIN, LineShapes.DASHED);
        shapes.span(outer, 70, hub, 70, "E", -8, -20);
        shapes.words(outward < 0 ? outer - 60 : outer - 80, 24, 140, word + " side");
        shapes.words(inner + (outward < 0 ? -96 : -4), INNER_UP - 44, 100, "inner datum face");
        shapes.words(outer + (outward < 0 ? -4 : -96), OUTER_UP - 56, 100, "outer datum face");
        shapes.words(
                outward < 0 ? inner - 106 : inner + 6, FLOOR + 4, 110, "F: fore-aft, from above");
    }

    private void bar(int from, int up, int to, int thick) {
        shapes.rectangle(Math.min(from, to), up - thick / 2, Math.abs(to - from), thick);
    }
}

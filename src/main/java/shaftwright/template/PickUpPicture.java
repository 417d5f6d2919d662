package shaftwright.template;

import static shaftwright.template.LineShapes.DASHED;
import static shaftwright.template.LineShapes.HEAVY;
import static shaftwright.template.LineShapes.PLAIN;
import static shaftwright.template.LineShapes.SOLID;
import static shaftwright.template.LineShapes.THIN;

import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * The three lengths that place a pick-up point: from behind its height above the floor, from above
 * how far it is out from the vehicle's centre plane and ahead of the fore-aft mark. Drawn in shapes
 * of black lines, in points of a sheet 720 wide and 210 high, with a wishbone of the left side.
 */
final class PickUpPicture {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 210;

    /** From behind. */
    private static final int FLOOR = 186;

    private static final int CENTRE_BEHIND = 330;
    private static final int WHEEL_BEHIND = 14;

    /** From above. */
    private static final int CENTRE_ABOVE = 676;

    private static final int WHEEL_ABOVE = 384;
    private static final int MARK = 128;

    private final LineShapes shapes;

    PickUpPicture(XSSFSheet sheet, int top, int bottom, int columns) {
        shapes = new LineShapes(sheet, top, bottom, columns, WIDTH, HEIGHT);
    }

    void draw() {
        behind();
        above();
    }

    /** A lower wishbone with hub and wheel, left side, from behind. */
    private void behind() {
        int ball = 96;
        int bush = 236;
        int height = 138;
        shapes.words(100, 0, 140, "left side, from behind");
        shapes.line(4, FLOOR, 350, FLOOR, HEAVY, SOLID);
        shapes.words(240, FLOOR + 3, 110, "one level floor");
        shapes.line(CENTRE_BEHIND, 14, CENTRE_BEHIND, FLOOR, THIN, DASHED);
        shapes.words(CENTRE_BEHIND - 40, 0, 80, "centre plane");
        shapes.box(WHEEL_BEHIND, 40, 48, FLOOR - 40, "wheel");
        shapes.line(WHEEL_BEHIND + 48, 108, ball, 108, PLAIN, SOLID);
        shapes.line(ball, 60, ball, height, PLAIN, SOLID);
        arm(ball, 60, 216, 72);
        arm(ball, height, bush, 128);
        shapes.span(bush, 134, bush, FLOOR, "height", 6, -8);
        shapes.line(ball, height + 6, ball, 176, THIN, DASHED);
        shapes.span(ball, 170, CENTRE_BEHIND, 170, "out", -90, -18);
        shapes.words(ball + 10, height - 20, 90, "ball joint's centre");
        shapes.words(bush - 62, 92, 110, "bush's centre");
    }

    private void arm(int x1, int y1, int x2, int y2) {
        shapes.line(x1, y1, x2, y2, HEAVY, SOLID);
        shapes.joint(x1, y1);
        shapes.joint(x2, y2);
    }

    /** The same wishbone from above. */
    private void above() {
        int ball = 470;
        int bush = 575;
        shapes.words(440, 0, 140, "the same, from above");
        shapes.line(CENTRE_ABOVE, 14, CENTRE_ABOVE, 204, THIN, DASHED);
        shapes.words(CENTRE_ABOVE - 40, 0, 80, "centre plane");
        shapes.box(WHEEL_ABOVE, 52, 48, 120, "wheel");
        shapes.line(WHEEL_ABOVE + 48, 110, ball, 110, PLAIN, SOLID);
        shapes.line(ball, 110, bush, 60, HEAVY, SOLID);
        shapes.line(ball, 110, bush, 176, HEAVY, SOLID);
        shapes.joint(ball, 110);
        shapes.joint(bush, 60);
        shapes.joint(bush, 176);
        shapes.line(440, MARK, 700, MARK, THIN, DASHED);
        shapes.words(432, MARK + 1, 70, "fore-aft mark");
        shapes.span(bush + 18, 60, bush + 18, MARK, "ahead, +", 8, -8);
        shapes.span(bush + 18, MARK, bush + 18, 176, "behind, −", 8, -8);
        shapes.span(bush, 42, CENTRE_ABOVE, 42, "out", -12, -18);
        shapes.line(bush, 36, bush, 54, THIN, DASHED);
        shapes.arrowUp(WHEEL_ABOVE + 4, 14, 40);
        shapes.words(WHEEL_ABOVE + 10, 18, 50, "forward");
    }
}

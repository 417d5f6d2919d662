package shaftwright.template;

import static shaftwright.template.LineShapes.DASHED;
import static shaftwright.template.LineShapes.HEAVY;
import static shaftwright.template.LineShapes.PLAIN;
import static shaftwright.template.LineShapes.SOLID;
import static shaftwright.template.LineShapes.THIN;

import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.contract.Contract;

/**
 * A joint on its cup, cut along its axis, with the lengths that the table of joints asks for. The
 * cup is on the left, the shaft runs to the right, toward the other end. Drawn in shapes of black
 * lines, in points of a sheet 640 wide and 225 high.
 */
final class JointPicture {
    /** Rows of ordinary height that it takes. */
    static final int ROWS = 15;

    /** Columns of the sheet of parts that it takes. */
    static final int COLUMNS = 8;

    private static final int WIDTH = 640;
    private static final int HEIGHT = 225;

    private static final int AXIS = 112;
    private static final int BACK = 70;
    private static final int LEDGE = 150;
    private static final int LIP = 176;
    private static final int RIM = 206;
    private static final int RING = 222;
    private static final int CENTRE = 246;
    private static final int FAR_SIDE = 2 * CENTRE - RIM;
    private static final int CUP_RADIUS = 56;
    private static final int LIP_RADIUS = 40;
    private static final int BODY_RADIUS = 72;
    private static final int SHAFT_RADIUS = 13;
    private static final int SHAFT_END = 208;

    private static final int WORDS = 400;
    private static final int LINE = 20;

    private final LineShapes shapes;

    JointPicture(XSSFSheet sheet, int top) {
        shapes = new LineShapes(sheet, top, top + ROWS, COLUMNS, WIDTH, HEIGHT);
    }

    void draw() {
        shapes.line(30, AXIS, 386, AXIS, THIN, DASHED);
        for (int up : new int[] {-1, 1}) {
            half(up);
        }
        shapes.line(BACK, AXIS - CUP_RADIUS, BACK, AXIS + CUP_RADIUS, HEAVY, SOLID);
        shapes.line(SHAFT_END, AXIS - SHAFT_RADIUS, SHAFT_END, AXIS + SHAFT_RADIUS, PLAIN, SOLID);
        shapes.line(CENTRE, 8, CENTRE, 218, THIN, DASHED);
        // The shaft at the angle limit, about the joint's centre.
        shapes.line(CENTRE, AXIS, 384, AXIS - 62, PLAIN, DASHED);
        lengths();
        words();
    }

    /** What stands above the axis or below it. */
    private void half(int up) {
        int wall = AXIS - up * CUP_RADIUS;
        shapes.line(BACK, wall, RIM, wall, HEAVY, SOLID);
        shapes.line(LEDGE, wall, LEDGE, wall - up * 18, HEAVY, SOLID);
        shapes.line(LIP, wall, LIP, AXIS - up * LIP_RADIUS, HEAVY, SOLID);
        int body = AXIS - up * BODY_RADIUS;
        shapes.line(RIM, body, FAR_SIDE, body, PLAIN, SOLID);
        shapes.line(RIM, body, RIM, AXIS - up * 44, PLAIN, SOLID);
        shapes.line(FAR_SIDE, body, FAR_SIDE, AXIS - up * 44, PLAIN, SOLID);
        // The race, and the ring that it bears on.
        shapes.rectangle(
                RING,
                Math.min(AXIS - up * SHAFT_RADIUS, AXIS - up * 34),
                2 * (CENTRE - RING),
                34 - SHAFT_RADIUS);
        shapes.line(RING - 2, AXIS - up * SHAFT_RADIUS, RING - 2, AXIS - up * 19, HEAVY, SOLID);
        int shaft = AXIS - up * SHAFT_RADIUS;
        shapes.line(SHAFT_END, shaft, 380, shaft, PLAIN, SOLID);
    }

    private void lengths() {
        shapes.line(LEDGE, AXIS - CUP_RADIUS - 18, LEDGE, 10, THIN, DASHED);
        shapes.span(LEDGE, 16, CENTRE, 16, "a", -8, -16);
        shapes.line(BACK, AXIS + CUP_RADIUS, BACK, 216, THIN, DASHED);
        shapes.span(BACK, 210, CENTRE, 210, "b", -8, -16);
        shapes.line(RING, AXIS + 34, RING, 200, THIN, DASHED);
        shapes.span(RING, 194, CENTRE, 194, "c", -6, -16);
        shapes.span(98, AXIS - CUP_RADIUS, 98, AXIS, "d", 4, -8);
        shapes.span(LIP, AXIS, LIP, AXIS - LIP_RADIUS, "e", -16, -8);
        shapes.span(LIP, AXIS + 48, CENTRE, AXIS + 48, "f", -28, -16);
        shapes.line(RIM, AXIS - BODY_RADIUS, RIM, 26, THIN, DASHED);
        shapes.span(RIM, 32, CENTRE, 32, "g", -8, -16);
        shapes.span(322, AXIS - BODY_RADIUS, 322, AXIS + BODY_RADIUS, "h", 4, 28);
        shapes.line(FAR_SIDE, AXIS - BODY_RADIUS, 330, AXIS - BODY_RADIUS, THIN, DASHED);
        shapes.line(FAR_SIDE, AXIS + BODY_RADIUS, 330, AXIS + BODY_RADIUS, THIN, DASHED);
        shapes.span(372, AXIS - 57, 372, AXIS, "i", 4, -8);
    }

    private void words() {
        String[][] rows = {
            {"a", "joint_datum_offset"},
            {"b", "joint_cup_bottom"},
            {"c", "joint_race_half_width"},
            {"d", "joint_cup_radius"},
            {"e", "joint_lip_radius"},
            {"f", "joint_lip_depth"},
            {"g", "joint_mouth"},
            {"h", "joint_body_diameter"},
            {"i", "joint_angle_max"},
        };
        int line = 8;
        for (String[] row : rows) {
            shapes.listed(
                    WORDS, line, WIDTH - WORDS, row[0] + "   " + Contract.input(row[1]).label());
            line += LINE;
        }
        shapes.words(BACK - 66, AXIS + 22, 60, "cup bottom");
        shapes.words(LEDGE - 84, 0, 80, "the tape touches");
        shapes.words(330, AXIS + 16, 60, "to the other end");
    }
}

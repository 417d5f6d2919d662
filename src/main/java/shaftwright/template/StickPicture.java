package shaftwright.template;

import static shaftwright.template.LineShapes.DASHED;
import static shaftwright.template.LineShapes.HEAVY;
import static shaftwright.template.LineShapes.SOLID;
import static shaftwright.template.LineShapes.THIN;

import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.contract.Contract;

/**
 * Both kinds of mock-up stick between two cups, cut along their axis, with what is read of them.
 * The inner cup is on the left. Drawn in shapes of black lines, in points of a sheet 760 wide and
 * 250 high.
 */
final class StickPicture {
    /** Rows of ordinary height that it takes. */
    static final int ROWS = 16;

    private static final int WIDTH = 760;
    private static final int HEIGHT = 250;
    private static final int SLIDING = 58;
    private static final int FIXED = 182;
    private static final int INNER_BACK = 24;
    private static final int OUTER_BACK = 496;
    private static final int CUP_RADIUS = 34;
    private static final int CUP_DEPTH = 78;
    private static final int END = 22;
    private static final int PIN = 44;
    private static final int PIN_RADIUS = 4;
    private static final int RACE = 28;
    private static final int RACE_RADIUS = 26;
    private static final int TUBE = 9;
    private static final int ROD = 6;
    private static final int STOP = 6;
    private static final int SLIDE = 20;
    private static final int WORDS = 530;
    private static final int LINE = 18;

    private final LineShapes shapes;

    StickPicture(XSSFSheet sheet, int top, int columns) {
        shapes = new LineShapes(sheet, top, top + ROWS, columns, WIDTH, HEIGHT);
    }

    void draw() {
        stick(SLIDING, 0);
        tube(SLIDING, INNER_BACK + END, 290, TUBE);
        tube(SLIDING, 290, OUTER_BACK - END, ROD);
        shapes.rectangle(280, SLIDING - 18, 20, 36);
        shapes.words(250, SLIDING - 36, 80, "clamp");
        shapes.line(INNER_BACK + PIN, SLIDING, INNER_BACK + PIN, SLIDING + 56, THIN, DASHED);
        shapes.line(OUTER_BACK - PIN, SLIDING, OUTER_BACK - PIN, SLIDING + 56, THIN, DASHED);
        shapes.span(INNER_BACK + PIN, SLIDING + 50, OUTER_BACK - PIN, SLIDING + 50, "a", -8, -18);
        stick(FIXED, SLIDE);
        tube(FIXED, INNER_BACK + END, OUTER_BACK - END, TUBE);
        shapes.span(230, FIXED, 290, FIXED, "b", -8, -28);
        lengths();
        words();
    }

    /** Cups, races, pins and what stops the races inboard, so far from them. */
    private void stick(int axis, int slide) {
        end(axis, INNER_BACK, 1, slide);
        end(axis, OUTER_BACK, -1, slide);
    }

    private void end(int axis, int back, int inboard, int slide) {
        shapes.line(back, axis - CUP_RADIUS, back, axis + CUP_RADIUS, HEAVY, SOLID);
        int pin = back + inboard * PIN;
        int race = pin + inboard * PIN_RADIUS;
        int stop = race + inboard * (RACE + slide);
        for (int up : new int[] {-1, 1}) {
            int wall = axis + up * CUP_RADIUS;
            shapes.line(back, wall, back + inboard * CUP_DEPTH, wall, HEAVY, SOLID);
            int top = Math.min(axis + up * TUBE, axis + up * RACE_RADIUS);
            shapes.rectangle(Math.min(race, race + inboard * RACE), top, RACE, RACE_RADIUS - TUBE);
            shapes.rectangle(
                    Math.min(stop, stop + inboard * STOP),
                    Math.min(axis + up * TUBE, axis + up * (TUBE + 8)),
                    STOP,
                    8);
        }
        shapes.joint(pin, axis);
    }

    private void tube(int axis, int from, int to, int radius) {
        shapes.rectangle(from, axis - radius, to - from, 2 * radius);
    }

    private void lengths() {
        int pin = INNER_BACK + PIN;
        shapes.line(pin, FIXED, pin, FIXED + 62, THIN, DASHED);
        shapes.line(OUTER_BACK - PIN, FIXED, OUTER_BACK - PIN, FIXED + 62, THIN, DASHED);
        shapes.span(pin, FIXED + 56, OUTER_BACK - PIN, FIXED + 56, "c", -8, -18);
        int face = pin + PIN_RADIUS;
        int race = face + RACE;
        shapes.line(race, FIXED - TUBE, race, FIXED - 44, THIN, DASHED);
        shapes.line(race + SLIDE, FIXED - TUBE, race + SLIDE, FIXED - 44, THIN, DASHED);
        shapes.span(race, FIXED - 38, race + SLIDE, FIXED - 38, "d", -8, -18);
        shapes.line(INNER_BACK + END, FIXED, INNER_BACK + END, FIXED - 52, THIN, DASHED);
        shapes.line(face, FIXED - RACE_RADIUS, face, FIXED - 52, THIN, DASHED);
        shapes.span(INNER_BACK + END, FIXED - 46, face, FIXED - 46, "e", -8, -18);
        int end = OUTER_BACK - END;
        shapes.line(end, FIXED - TUBE, end + 40, FIXED - TUBE, THIN, DASHED);
        shapes.line(end, FIXED + TUBE, end + 40, FIXED + TUBE, THIN, DASHED);
        shapes.span(end + 34, FIXED - TUBE, end + 34, FIXED + TUBE, "f", 3, -9);
    }

    private void words() {
        String[][] rows = {
            {"a", Contract.input("stick_holes_in").label()},
            {"", "   or fully out"},
            {"b", Contract.input("stick_play").label()},
            {"c", Contract.input("stick_holes").label()},
            {"d", "Race slides on the stick"},
            {"e", "Stick beyond the pin"},
            {"f", "Stick's end diameter"},
        };
        int line = 40;
        for (String[] row : rows) {
            shapes.listed(WORDS, line, WIDTH - WORDS, row[0] + "   " + row[1]);
            line += LINE;
        }
        shapes.words(150, 2, 120, "sliding stick");
        shapes.words(150, FIXED - 58, 120, "fixed stick");
        shapes.words(INNER_BACK + 70, SLIDING + 30, 110, "stopped inboard");
        shapes.line(
                INNER_BACK + PIN + PIN_RADIUS + RACE + 3,
                SLIDING + TUBE + 8,
                INNER_BACK + 110,
                SLIDING + 32,
                THIN,
                SOLID);
    }
}

package shaftwright.study;

import static shaftwright.study.DerivationStep.Kind.ANGLE;
import static shaftwright.study.DerivationStep.Kind.COUNT;
import static shaftwright.study.DerivationStep.Kind.LENGTH;
import static shaftwright.study.DerivationStep.Kind.NUMBER;

import java.util.List;
import shaftwright.units.LengthUnit;

/**
 * A step on the way from tape readings to a shaft's length, in the order in which one would take
 * them with a pocket calculator. Sheet and terminal say the same of each, since both read it here.
 *
 * <p>A step has up to three figures in a first group and up to three in a second. What the groups
 * are is its topic's.
 */
public enum DerivationStep {
    HEIGHT(Topic.GIVEN, "Datum above the floor, wheel at ride", "z_i | z_r", list(LENGTH), 1),
    MOVED(
            Topic.GIVEN,
            "Moved by the scenario: flange (x, y, z) | hub outward",
            "f | h",
            list(LENGTH, LENGTH, LENGTH),
            list(LENGTH)),
    AXIS(Topic.GIVEN, "Inner flange's axis (x, y, z)", "u", list(NUMBER, NUMBER, NUMBER), 0),
    CENTRE(Topic.GIVEN, "Datum to joint centre", "a", list(LENGTH), 1),
    SEAT(Topic.GIVEN, "Race centre to ring", "r - k", list(LENGTH), 1),
    STUB(Topic.GIVEN, "Shaft end beyond ring", "e", list(LENGTH), 1),
    OVERHANG(Topic.GIVEN, "Race centre to shaft end", "L = r - k + e", list(LENGTH), 1),
    END_RADIUS(Topic.GIVEN, "Half the shaft end's diameter", "R", list(LENGTH), 1),
    CUP(Topic.GIVEN, "Joint centre to cup bottom", "c", list(LENGTH), 1),
    BOOT(Topic.GIVEN, "What the boot adds to travel outward", "b", list(LENGTH), 1),
    BENCH(
            Topic.GIVEN,
            "Travel of the race on the bench (angle, in, out)",
            "A, x_in, x_out",
            list(ANGLE, LENGTH, LENGTH),
            3),

    ROW(Topic.POSITIONS, "Row of the tables: 1 droop, 13 ride, 25 bump", "", list(COUNT), 1),
    TRAVEL(Topic.POSITIONS, "Travel there, bump +", "t", list(LENGTH), 1),
    OUTER_HEIGHT(Topic.POSITIONS, "Outer datum above the floor", "z = z_r + t", list(LENGTH), 1),
    NEAREST(Topic.POSITIONS, "Nearest tape reading (row, height)", "", list(COUNT, LENGTH), 2),
    READ(
            Topic.POSITIONS,
            "Its distance (as read, by the curve through all)",
            "",
            list(LENGTH, LENGTH),
            2),
    BY_CURVE(
            Topic.POSITIONS,
            "Outer datum by the curve (x, y, z)",
            "x, W, z - z_i",
            list(LENGTH, LENGTH, LENGTH),
            3),
    DISTANCE(
            Topic.POSITIONS,
            "Distance from datum to datum",
            "C = sqrt(x² + W² + (z - z_i)²)",
            list(LENGTH),
            1),
    TILT(Topic.POSITIONS, "Camber and toe by the curve", "camber, toe", list(ANGLE, ANGLE), 2),
    STUB_AXIS(
            Topic.POSITIONS,
            "Stub axis (x, y, z); turned, where the hub is steered",
            "n = (sin toe cos camber, cos toe cos camber, -sin camber)",
            list(NUMBER, NUMBER, NUMBER),
            3),
    STEERED(
            Topic.POSITIONS,
            "Outer datum moved by steering (x, y, z)",
            "v",
            list(LENGTH, LENGTH, LENGTH),
            3),
    APART(
            Topic.POSITIONS,
            "Joint centre to joint centre (x, y, z)",
            "d = (x, W + h, z - z_i) + v - f - a_i u - a_o n",
            list(LENGTH, LENGTH, LENGTH),
            3),
    CENTRE_DISTANCE(Topic.POSITIONS, "Centre distance", "D = |d|", list(LENGTH), 1),
    MIDDLE_ANGLES(
            Topic.POSITIONS,
            "Joint angles, races in the middle (inner, outer)",
            "tan A_i = |d - (d·u) u| / (d·u), A_o with n",
            list(ANGLE, ANGLE),
            2),
    WAY(
            Topic.POSITIONS,
            "Way of the races: 1 in, -1 out (inner, outer)",
            "s",
            list(COUNT, COUNT),
            2),
    FIRST_TRAVEL(
            Topic.POSITIONS,
            "Travel at those angles (inner, outer)",
            "X1: as X below",
            list(LENGTH, LENGTH),
            2),
    ANGLES(
            Topic.POSITIONS,
            "Joint angles, races there (inner, outer)",
            "w = d + s_i X1_i u + s_o X1_o n; tan A_i = |w - (w·u) u| / (w·u), A_o with n",
            list(ANGLE, ANGLE),
            2),
    RACE(
            Topic.POSITIONS,
            "Race may go, by the bench rows (inner, outer)",
            "straight between rows; outward + b",
            list(LENGTH, LENGTH),
            2),
    SHAFT_END(
            Topic.POSITIONS,
            "Shaft end may go, inward (inner, outer)",
            "c - L cos A - R sin A",
            list(LENGTH, LENGTH),
            2),
    TRAVELS(Topic.POSITIONS, "The lesser of both (inner, outer)", "X", list(LENGTH, LENGTH), 2),
    MOCK_UP(
            Topic.POSITIONS,
            "Correction by the mock-up stick, where it counts",
            "M",
            list(LENGTH),
            1),
    SPACING(
            Topic.POSITIONS,
            "Race spacing there",
            "S = M + |d + s_i X_i u + s_o X_o n|",
            list(LENGTH),
            1),
    MARGIN(Topic.POSITIONS, "Margin, and doubt of the path", "m, U", list(LENGTH, LENGTH), 2),
    WITH_MARGIN(
            Topic.POSITIONS,
            "Race spacing with both",
            "F = S - m - U | F = S + m + U",
            list(LENGTH),
            1),
    BESIDE_TRAVEL(
            Topic.POSITIONS,
            "Travel of the rows beside (below, above)",
            "t1, t2",
            list(LENGTH, LENGTH),
            2),
    BESIDE(
            Topic.POSITIONS,
            "Race spacing with both there (below, above)",
            "F1, F2",
            list(LENGTH, LENGTH),
            2),
    BOUND(
            Topic.POSITIONS,
            "Longest | shortest race spacing: F, or a parabola's top between the rows",
            "p = (F - F1) / (t - t1), q = (F2 - F) / (t2 - t), y = (q - p) / (t2 - t1),"
                    + " g = p + y (t - t1); S = F - g² / 4y",
            list(LENGTH),
            1),
    WINDOW(
            Topic.POSITIONS,
            "Longest | shortest end to end",
            "E = S + (r - k)_i + (r - k)_o + e_i + e_o",
            list(LENGTH),
            1),

    PREFERENCE(Topic.CHOICE, "Length preference: 0 shortest, 1 longest", "j", list(NUMBER), 0),
    WANTED(Topic.CHOICE, "End to end wanted", "E_min + j (E_max - E_min)", list(LENGTH), 0),
    INCREMENT(Topic.CHOICE, "Shop increment; 0 for none", "I", list(LENGTH), 0),
    CHOSEN(
            Topic.CHOICE,
            "End to end, the nearest step inside the window",
            "E = whole number × I",
            list(LENGTH),
            0),
    CLIP_TO_CLIP(Topic.CHOICE, "Clip to clip", "K = E - e_i - e_o", list(LENGTH), 0),
    CARD_CLIP(
            Topic.CHOICE,
            "Clip to clip on the card; a blank's own two grooves may set it",
            "K",
            list(LENGTH),
            0),
    CARD_STUB(
            Topic.CHOICE,
            "Shaft ends beyond the rings on the card (inner, outer)",
            "e2",
            list(LENGTH, LENGTH),
            0),
    CARD_END(Topic.CHOICE, "End to end on the card", "E = K + e2_i + e2_o", list(LENGTH), 0),
    CARD_SPACING(
            Topic.CHOICE,
            "Race spacing of that shaft",
            "S0 = K - (r - k)_i - (r - k)_o",
            list(LENGTH),
            0),
    SLACK(
            Topic.CHOICE,
            "Left there: before bottoming | before pull-out",
            "S - S0 | S0 - S",
            list(LENGTH),
            1);

    /** What is explained once, above all steps. */
    public static final List<String> SYMBOLS =
            List.of(
                    "x runs forward, y outward, z up from the inner datum; _i means the inner end,"
                            + " _o the outer. u and n are directions of length one, outward: the inner"
                            + " flange's axis and the stub axis. d·u is d_x u_x + d_y u_y + d_z u_z,"
                            + " |d| is sqrt(d·d).",
                    "A is a joint's angle, X how far its race may go along its cup's axis from the"
                            + " middle of its travel. D lies between joint centres, S between race"
                            + " centres, K from ring to ring, E from end to end.");

    /** Rows of a joint's bench table that are shown. */
    public static final int BENCH_ROWS = 6;

    /** Figures of a group at most. */
    public static final int FIGURES = 3;

    /** What a figure is. */
    public enum Kind {
        /**
         * mm in the core, shown in the workbook's unit: with four decimals of an inch, which a
         * sixteenth has, or two of a millimetre.
         */
        LENGTH,
        /** rad in the core, shown in degrees to hundredths. */
        ANGLE,
        /** A direction's part or a share, to five decimals. */
        NUMBER,
        /** A whole number. */
        COUNT;

        /** A figure as it is shown. */
        public double shown(double figure, LengthUnit unit) {
            return switch (this) {
                case LENGTH -> figure / unit.mm();
                case ANGLE -> Math.toDegrees(figure);
                default -> figure;
            };
        }

        /** Decimals that it is shown with. */
        public int decimals(LengthUnit unit) {
            return switch (this) {
                case LENGTH -> unit == LengthUnit.INCH ? 4 : 2;
                case ANGLE -> 2;
                case NUMBER -> 5;
                case COUNT -> 0;
            };
        }

        /** Stands behind it. */
        public String symbol(LengthUnit unit) {
            return switch (this) {
                case LENGTH -> " " + unit.symbol();
                case ANGLE -> "°";
                default -> "";
            };
        }

        /** A figure as it is written: "25.375 in". */
        public String text(double figure, LengthUnit unit) {
            return Wording.rounded(shown(figure, unit), decimals(unit)) + symbol(unit);
        }
    }

    /** A part of the way, and what its groups of figures are. */
    public enum Topic {
        GIVEN("What is given", "Inner end", "Outer end"),
        POSITIONS("At the two positions that set the limits", "Longest shaft", "Shortest shaft"),
        CHOICE("The length", "", "");

        private final String title;
        private final String first;
        private final String second;

        Topic(String title, String first, String second) {
            this.title = title;
            this.first = first;
            this.second = second;
        }

        public String title() {
            return title;
        }

        /** What the first figures are of. */
        public String first() {
            return first;
        }

        public String second() {
            return second;
        }
    }

    private final Topic topic;
    private final String words;
    private final String formula;
    private final List<Kind> first;
    private final List<Kind> second;

    DerivationStep(Topic topic, String words, String formula, List<Kind> first, List<Kind> second) {
        this.topic = topic;
        this.words = words;
        this.formula = formula;
        this.first = first;
        this.second = second;
    }

    /** One whose second figures are of the same kinds as so many of the first. */
    DerivationStep(Topic topic, String words, String formula, List<Kind> first, int second) {
        this(topic, words, formula, first, first.subList(0, second));
    }

    private static List<Kind> list(Kind... kinds) {
        return List.of(kinds);
    }

    public Topic topic() {
        return topic;
    }

    /** What its figures are; a bar parts the groups. */
    public String words() {
        return words;
    }

    /** How they follow from figures above, in symbols; a symbol alone where they are given. */
    public String formula() {
        return formula;
    }

    /** Lines below each other. */
    public int rows() {
        return this == BENCH ? BENCH_ROWS : 1;
    }

    /** Kinds of its first figures. */
    public List<Kind> first() {
        return first;
    }

    public List<Kind> second() {
        return second;
    }
}

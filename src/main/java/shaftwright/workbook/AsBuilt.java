package shaftwright.workbook;

import java.util.List;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.InputKind;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.PlungeState;
import shaftwright.shaft.ShaftLine;
import shaftwright.shaft.SideResult;

/**
 * One side's finished shaft, as measured, against what was planned for the scenario on the shop
 * cards. The shaft as it was cut has another race-centre spacing than planned: each slack moves by
 * the difference, at every position alike, and the joints stand at the angles of that spacing.
 */
public final class AsBuilt {
    /** Where play and angles are measured, in the order of the rows. */
    public enum Place {
        BUMP("full bump", 0, 24),
        RIDE("ride height", 1, 12),
        DROOP("full droop", 2, 0);

        private final String words;
        private final int row;
        private final int position;

        Place(String words, int row, int position) {
            this.words = words;
            this.row = row;
            this.position = position;
        }

        public String words() {
            return words;
        }

        /** Zero-based row in which it is typed. */
        public int row() {
            return row;
        }

        /** Zero-based row of the position table. */
        public int position() {
            return position;
        }

        /** The place of a row. */
        public static Place of(int row) {
            return row == 0 ? BUMP : row == 1 ? RIDE : DROOP;
        }
    }

    private final InputValues inputs;
    private final Side side;
    private final SideResult result;

    private AsBuilt(InputValues inputs, Side side, SideResult result) {
        this.inputs = inputs;
        this.side = side;
        this.result = result;
    }

    /** The side's shaft on the shop card, null when the cards are empty. */
    public static AsBuilt ofOrNull(Sizing sizing, Side side) {
        int scenario = sizing.shopScenario();
        SideResult result = scenario < 0 ? null : sizing.resultOrNull(new Index(side, scenario, 0));
        return result == null ? null : new AsBuilt(sizing.inputs(), side, result);
    }

    /** Whether its length as cut was measured. */
    public boolean cutMeasured() {
        return !Double.isNaN(asCut("built_k")) || !Double.isNaN(asCut("built_e"));
    }

    /** How much longer it was cut than planned, mm: by K, else by E, else 0. */
    public double shift() {
        double k = asCut("built_k");
        double e = asCut("built_e");
        if (!Double.isNaN(k)) {
            return k - result.length().clipToClip();
        }
        return Double.isNaN(e) ? 0 : e - result.length().endToEnd();
    }

    private double asCut(String name) {
        return inputs.number(name, side, 0);
    }

    /** Least slack before bottoming of the shaft as cut, mm. */
    public double slackIn() {
        return result.leastSlackIn().value() - shift();
    }

    /** Least slack before pull-out of the shaft as cut, mm. */
    public double slackOut() {
        return result.leastSlackOut().value() + shift();
    }

    /** End play to be expected of the shaft as cut, mm. */
    public double play(Place place) {
        FittedPosition row = row(place);
        PlungeState in = row.position().inward();
        PlungeState out = row.position().outward();
        return Math.min(
                Math.min(row.slackIn() - shift(), row.slackOut() + shift()),
                Math.min(
                        in.innerTravel() + out.innerTravel(),
                        in.outerTravel() + out.outerTravel()));
    }

    /** Doubt of the hub path there, mm. */
    public double pathDoubt(Place place) {
        return row(place).position().hub().doubt();
    }

    /** What play may be off by before it says something, mm: path and tape. */
    public double playDoubt(Place place) {
        return pathDoubt(place) + inputs.number("tape_graduation");
    }

    /** The same of an angle, rad: gauge, and path and height over the distance of the joints. */
    public double angleDoubt(Place place) {
        return inputs.number("built_gauge")
                + (pathDoubt(place) + inputs.number("height_graduation"))
                        / row(place).position().distance();
    }

    /**
     * Equal push toward both cups' backs of the shaft as cut, mm; NaN when it is too short to join
     * the centres at all.
     */
    public double push(Place place) {
        double spacing = result.length().spacing() + shift();
        ShaftLine line = row(place).position().line();
        return line.reaches(spacing) ? line.pushIn(spacing) : Double.NaN;
    }

    /** Angle to be expected of the shaft as cut, rad; NaN where {@link #push} is. */
    public double innerAngle(Place place) {
        double push = push(place);
        return Double.isNaN(push)
                ? Double.NaN
                : row(place).position().line().innerAngle(push, push);
    }

    /** The same at the hub. */
    public double outerAngle(Place place) {
        double push = push(place);
        return Double.isNaN(push)
                ? Double.NaN
                : row(place).position().line().outerAngle(push, push);
    }

    private FittedPosition row(Place place) {
        return result.fitted().get(place.position());
    }

    /** Says what was measured other than expected by more than the doubt. */
    static void check(Sizing sizing, List<Problem> problems) {
        for (Side side : Side.values()) {
            AsBuilt built = ofOrNull(sizing, side);
            if (built != null) {
                built.check(problems);
            }
        }
        ServiceLog.of(sizing.inputs()).check(sizing.inputs(), problems);
    }

    private void check(List<Problem> problems) {
        if (cutMeasured() && (slackIn() < 0 || slackOut() < 0)) {
            String name = Double.isNaN(asCut("built_k")) ? "built_e" : "built_k";
            problems.add(
                    Problem.warning(
                            inputs.placeOrNull(name, new Index(side, 0, 0)),
                            Contract.input(name).label() + ", " + side.word(),
                            inputs.shownLength(asCut(name)),
                            "a shaft that neither bottoms nor pulls out; this one "
                                    + (slackIn() < 0
                                            ? "bottoms by " + inputs.shownLength(-slackIn())
                                            : "pulls out by " + inputs.shownLength(-slackOut()))));
        }
        for (Place place : Place.values()) {
            check(problems, "built_play", place, play(place), playDoubt(place));
            check(problems, "built_angle_inner", place, innerAngle(place), angleDoubt(place));
            check(problems, "built_angle_outer", place, outerAngle(place), angleDoubt(place));
        }
    }

    private void check(
            List<Problem> problems, String name, Place place, double planned, double doubt) {
        Index index = new Index(side, 0, place.row());
        double measured = inputs.number(name, index);
        if (isBeyond(measured - planned, doubt)) {
            problems.add(
                    Problem.warning(
                            inputs.placeOrNull(name, index),
                            Contract.input(name).label()
                                    + " at "
                                    + place.words()
                                    + ", "
                                    + side.word(),
                            shown(name, measured),
                            shown(name, planned)
                                    + " as planned, within a doubt of "
                                    + shown(name, doubt)));
        }
    }

    /** Whether a difference is more than its doubt, to a millionth of a mm or rad. */
    public static boolean isBeyond(double difference, double doubt) {
        return !Double.isNaN(difference) && Math.rint((Math.abs(difference) - doubt) * 1e6) > 0;
    }

    private String shown(String name, double value) {
        return Contract.input(name).kind() == InputKind.LENGTH
                ? inputs.shownLength(value)
                : Math.rint(Math.toDegrees(value) * 10) / 10 + "°";
    }
}

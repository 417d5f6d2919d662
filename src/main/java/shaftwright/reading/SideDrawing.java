package shaftwright.reading;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.ViewPart;
import shaftwright.shaft.InnerFlange;
import shaftwright.suspension.HubAxes;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.LinkagePath;
import shaftwright.suspension.Member;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/**
 * What the drawing of a side shows: the scenario on the shop cards at full droop, ride and full
 * bump, as far as it is known, from three directions in one scale. Points are ahead of the fore-aft
 * mark, outward from the vehicle's centre plane and above what heights are taken from, mm.
 *
 * <p>Points of the linkage go along with the hub path in use, pitched as the linkage pitches the
 * hub; with a measured path they fit it as well as tape and linkage agree.
 */
public final class SideDrawing {
    /** A wheel position. */
    private record Stand(
            double travel,
            double norm,
            HubPoint hub,
            double pitch,
            Vector datum,
            HubAxes axes,
            Vector face,
            HubAxes wheelAxes,
            Vector wheel) {
        double tilt() {
            return Math.abs(Math.sin(wheelAxes.camber())) + Math.abs(Math.sin(wheelAxes.toe()));
        }
    }

    private record Span(double low, double high) {}

    /** Which way a figure of the drawing runs. */
    public enum Way {
        AHEAD,
        OUT,
        UP;

        /** A point's part this way, mm. */
        public double of(Vector point) {
            return switch (this) {
                case AHEAD -> point.x();
                case OUT -> point.y();
                case UP -> point.z();
            };
        }
    }

    private final Sizing sizing;
    private final HubPath path;
    private final SideLinkage linkage;
    private final ScenarioOutcome scenario;
    private final SideOutcome outcome;
    private final Stand[] stands = new Stand[ViewPart.STANDS];
    private final Vector[] arms = new Vector[LinkageKind.MOST_POINTS];
    private final Map<Way, Span> spans = new EnumMap<>(Way.class);
    private final double square;
    private final Map<Way, Double> bases = new EnumMap<>(Way.class);

    /** Places of all points, found when first asked for. */
    private final Vector[] spots = new Vector[Grid.VIEW_SPOT.rows()];

    private SideDrawing(Sizing sizing, Side side, SidePath shownPath, HubPath path) {
        this.sizing = sizing;
        this.path = path;
        linkage = shownPath.linkage();
        int shown = sizing.shopScenario();
        scenario = shown < 0 ? null : sizing.scenario(shown);
        outcome = shown < 0 || !scenario.side(side).isSetUp() ? null : scenario.side(side);
        stands[0] = stand(travelLow());
        stands[ViewPart.RIDE] = stand(0);
        stands[2] = stand(travelHigh());
        for (int point = 0; point < arms.length; point++) {
            arms[point] = arm(point);
        }
        for (Way way : Way.values()) {
            span(way);
        }
        square = leastSquare();
        for (Way way : Way.values()) {
            bases.put(way, leastBase(way));
        }
    }

    /** A side's drawing, null while there is no path to draw. */
    static SideDrawing orNull(Sizing sizing, Side side) {
        SidePath way = sizing.path(side, sizing.shopScenario());
        HubPath path = way.chosen().orElse(null);
        return path == null ? null : new SideDrawing(sizing, side, way, path);
    }

    private double travelLow() {
        double low = outcome == null ? Double.NaN : outcome.droop();
        return Math.max(path.tMin(), Double.isNaN(low) ? path.tMin() : low);
    }

    private double travelHigh() {
        double high = outcome == null ? Double.NaN : outcome.bump();
        return Math.min(path.tMax(), Double.isNaN(high) ? path.tMax() : high);
    }

    private Stand stand(double travel) {
        HubPoint hub = path.at(travel);
        HubAxes axes = HubAxes.of(hub.camber(), hub.toe());
        Vector datum = datum(hub);
        Vector face = datum.plus(steer().datum(axes));
        HubAxes wheel = HubAxes.along(steer().stubAxis(axes));
        return new Stand(
                travel,
                hub.s(),
                hub,
                pitch(travel),
                datum,
                axes,
                face,
                wheel,
                wheel.from(face, wheelArm(), 0, 0));
    }

    private Vector datum(HubPoint hub) {
        return new Vector(
                typed("inner_ahead") + hub.foreAft(),
                typed("inner_offset") + Math.sqrt(Math.max(0, hub.reachSquared())) + hubShift(),
                typed("inner_height") + hub.rise());
    }

    /** A typed length of the side, 0 when there is none. */
    private double typed(String name) {
        double number = linkage.typed(name, 0);
        return Double.isNaN(number) ? 0 : number;
    }

    private double pitch(double travel) {
        LinkagePath solved = linkage.path().orElse(null);
        if (solved == null) {
            return 0;
        }
        return solved.pitch().at(within(solved, travel));
    }

    private static double within(LinkagePath solved, double travel) {
        return Math.max(-1, Math.min(1, solved.path().normalised(travel)));
    }

    /** Travel normalised to the linkage's and not beyond its ends; 0 without a linkage. */
    public double linkageNorm(int stand) {
        return linked() ? within(linkage.path().orElseThrow(), stands[stand].travel) : 0;
    }

    /** Whether points of a linkage are drawn. */
    public boolean linked() {
        return linkage.path().isPresent();
    }

    private List<Member> members() {
        return linkage.linkage().orElseThrow().members();
    }

    /** Whether a row's point is a hub end; false as well where the kind has no such point. */
    public static boolean endsOnHub(List<Member> members, int point) {
        int last = -1;
        for (Member member : members) {
            last += member.shape().ends().size();
            if (point <= last) {
                return point == last && member.shape().endsOnHub();
            }
        }
        return false;
    }

    private int points() {
        return linkage.linkage().orElseThrow().points().size();
    }

    /**
     * A linkage's point from the outer datum, along the hub's axes at ride; null when not drawn.
     */
    private Vector arm(int point) {
        if (!linked() || point >= points()) {
            return null;
        }
        Stand ride = stands[ViewPart.RIDE];
        Vector datum = ride.datum.plus(-hubShift(), new Vector(0, 1, 0));
        return ride.axes.partsOf(typedPoint(point).minus(datum));
    }

    private Vector typedPoint(int point) {
        return new Vector(
                linkage.typed("point_ahead", point),
                linkage.typed("point_out", point),
                linkage.typed("point_height", point));
    }

    /** Its part along a hub axis at ride, mm; NaN when it is not drawn. */
    public double arm(int point, Way way) {
        return arms[point] == null
                ? Double.NaN
                : switch (way) {
                    case OUT -> arms[point].x();
                    case AHEAD -> arms[point].y();
                    case UP -> arms[point].z();
                };
    }

    /** Where a linkage's point stands; the outer datum where it is not drawn. */
    public Vector point(int point, int stand) {
        Stand at = stands[stand];
        if (arms[point] == null) {
            return at.datum;
        }
        if (!endsOnHub(members(), point)) {
            return typedPoint(point);
        }
        Vector arm = arms[point];
        return at.axes.pitched(at.pitch).from(at.datum, arm.x(), arm.y(), arm.z());
    }

    private void span(Way way) {
        double least = way.of(innerDatum());
        double most = least;
        double tilt = 0;
        double nearest = Double.POSITIVE_INFINITY;
        double farthest = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < ViewPart.STANDS; s++) {
            Stand stand = stands[s];
            tilt = Math.max(tilt, stand.tilt());
            nearest = Math.min(nearest, way.of(stand.wheel));
            farthest = Math.max(farthest, way.of(stand.wheel));
            for (int point = 0; point < arms.length; point++) {
                least = Math.min(least, way.of(point(point, s)));
                most = Math.max(most, way.of(point(point, s)));
            }
        }
        double room =
                way == Way.OUT ? halfWidth() + radius() * tilt : radius() + halfWidth() * tilt;
        spans.put(way, new Span(Math.min(least, nearest - room), Math.max(most, farthest + room)));
    }

    /** Least of what is drawn this way, mm. */
    public double low(Way way) {
        return spans.get(way).low;
    }

    /** Most of what is drawn this way, mm. */
    public double high(Way way) {
        return spans.get(way).high;
    }

    /**
     * The side of a square, in the workbook's unit: the least plain number that has room for all.
     */
    public double square() {
        return square;
    }

    /** The least square that has room for all, whatever its frame begins with. */
    public double wanted() {
        double span = 0;
        for (Way way : Way.values()) {
            span = Math.max(span, high(way) - low(way));
        }
        return span / sizing.unit().mm() / (ViewPart.SQUARES - 1);
    }

    /** The power of ten not above that. */
    public double power() {
        return Math.pow(10, Math.floor(rounded(Math.log10(wanted()), 9)));
    }

    private double leastSquare() {
        double power = power();
        double times = rounded(wanted() / power, 9);
        for (double plain : PLAIN) {
            if (times <= plain) {
                return power * plain;
            }
        }
        return power * 10;
    }

    /** Plain numbers below ten. */
    public static final List<Double> PLAIN = List.of(1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0);

    /** Halves away from zero, as spreadsheets round. */
    public static double rounded(double value, int decimals) {
        double shift = Math.pow(10, decimals);
        return Math.signum(value) * Math.floor(Math.abs(value) * shift + 0.5) / shift;
    }

    /** Squares from the origin to the frame's lower edge; along the vehicle things are centred. */
    public double base(Way way) {
        return bases.get(way);
    }

    private double leastBase(Way way) {
        double step = square() * sizing.unit().mm();
        double floor = Math.floor(rounded(low(way) / step, 6));
        if (way != Way.AHEAD) {
            return floor;
        }
        double ceiling = Math.ceil(rounded(high(way) / step, 6));
        return floor - Math.floor((ViewPart.SQUARES - (ceiling - floor)) / 2);
    }

    /** Where a row's point stands in the frame, in squares from its lower edge. */
    public double drawn(int row, Way way) {
        if (spots[row] == null) {
            spots[row] = spot(ViewPart.Spot.at(row));
        }
        return way.of(spots[row]) / (square * sizing.unit().mm()) - base(way);
    }

    private Vector spot(ViewPart.Spot spot) {
        Stand stand = stands[spot.stand()];
        return switch (spot.part()) {
            case WAY -> datum(path.at(wayTravel(spot.number())));
            case CHAIN -> chain(stand, spot.number());
            case LINKAGE -> {
                int point = order(spot.number());
                yield point == 0 ? stand.datum : point(point - 1, spot.stand());
            }
            default ->
                    stand.wheelAxes.from(
                            stand.wheel,
                            halfWidth() * spot.halfWidths(),
                            radius() * spot.radiiAhead(),
                            radius() * spot.radiiUp());
        };
    }

    /** The same travel normalised to the path's. */
    public double wayNorm(int number) {
        return path.normalised(wayTravel(number));
    }

    /** Travel at a point of the outer datum's way, mm. */
    public double wayTravel(int number) {
        double from = stands[0].travel;
        return from + (stands[2].travel - from) * number / (ViewPart.WAY.size() - 1);
    }

    private Vector chain(Stand stand, int number) {
        return switch (number) {
            case 0 -> innerDatum();
            case 1 -> innerDatum().plus(centre(true), flange().axis());
            case 2 -> stand.wheelAxes.from(stand.face, -centre(false), 0, 0);
            case 3 -> stand.face;
            default -> stand.wheel;
        };
    }

    private Vector innerDatum() {
        return new Vector(typed("inner_ahead"), typed("inner_offset"), typed("inner_height"))
                .plus(flange().shift());
    }

    /** The inner flange in the scenario shown. */
    public InnerFlange flange() {
        return outcome == null ? sizing.innerFlange() : outcome.flange();
    }

    /** How far the hub is steered in the scenario shown. */
    public Steer steer() {
        return outcome == null || outcome.resultOrNull() == null
                ? Steer.STRAIGHT
                : outcome.resultOrNull().setup().steer();
    }

    /** Move of the hub outward in the scenario shown, mm. */
    public double hubShift() {
        return outcome == null ? 0 : outcome.hubShift();
    }

    /** Datum to joint centre, 0 without joints, mm. */
    public double centre(boolean inner) {
        if (outcome == null) {
            return 0;
        }
        return (inner ? outcome.inner() : outcome.outer()).datumToCentre();
    }

    /** Outer datum to wheel centre, mm. */
    public double wheelArm() {
        return scenario == null ? 0 : scenario.wheelArm();
    }

    /** The tyre's radius, 0 when it is not known, mm. */
    public double radius() {
        double diameter = scenario == null ? 0 : scenario.tyreDiameter();
        return Double.isNaN(diameter) ? 0 : diameter / 2;
    }

    /** Half of the tyre's section width, 0 when it is not known, mm. */
    public double halfWidth() {
        double width = scenario == null ? 0 : scenario.tyreSectionWidth();
        return Double.isNaN(width) ? 0 : width / 2;
    }

    /** Whether joints, shifts and travel of the scenario shown are known. */
    public boolean hasShaft() {
        return outcome != null;
    }

    /** Where the inner joint's flange is held. */
    public Vector inner() {
        return innerDatum();
    }

    /** The path that is drawn. */
    public HubPath path() {
        return path;
    }

    /** How far the hub pitches along it, 0 without a linkage. */
    public Polynomial pitch() {
        return linked() ? linkage.path().orElseThrow().pitch() : Polynomial.ZERO;
    }

    /** Travel at a stand, mm. */
    public double travel(int stand) {
        return stands[stand].travel;
    }

    /** The same normalised to the path's whole travel. */
    public double norm(int stand) {
        return stands[stand].norm;
    }

    public double camber(int stand) {
        return stands[stand].hub.camber();
    }

    public double toe(int stand) {
        return stands[stand].hub.toe();
    }

    /** How far the hub has pitched, its front up, rad. */
    public double pitch(int stand) {
        return stands[stand].pitch;
    }

    /** The outer datum of the hub steered straight ahead. */
    public Vector datum(int stand) {
        return stands[stand].datum;
    }

    /** Directions that go along with the hub, not pitched and steered straight ahead. */
    public HubAxes axes(int stand) {
        return stands[stand].axes;
    }

    /** The outer datum of the steered hub. */
    public Vector face(int stand) {
        return stands[stand].face;
    }

    /** Directions that go along with the steered wheel. */
    public HubAxes wheelAxes(int stand) {
        return stands[stand].wheelAxes;
    }

    /** The wheel's centre. */
    public Vector wheel(int stand) {
        return stands[stand].wheel;
    }

    /** How much camber and toe, as steered, let the tyre reach farther. */
    public double tilt(int stand) {
        return stands[stand].tilt();
    }

    /** Which point, from 1, the linkage's line goes to; 0 for the outer datum. */
    private int order(int number) {
        if (!linked()) {
            return 0;
        }
        return order(members(), number);
    }

    /** The same of any parts. */
    public static int order(List<Member> members, int number) {
        int row = 1;
        int before = 0;
        for (Member member : members) {
            String way = way(member.shape());
            if (number < row) {
                return 0;
            }
            if (number < row + way.length()) {
                int end = way.charAt(number - row) - '0';
                return end == 0 ? 0 : before + end;
            }
            row += way.length();
            before += member.shape().ends().size();
        }
        return 0;
    }

    /** From the outer datum along a part and back, by its ends from 1; 0 is the datum. */
    private static String way(Member.Shape shape) {
        return switch (shape) {
            case SQUARE_PIVOT, BALL_PIVOT -> "10";
            case PIVOT_AXIS -> "120";
            case WISHBONE -> "31230";
            case LINK -> "2120";
        };
    }
}

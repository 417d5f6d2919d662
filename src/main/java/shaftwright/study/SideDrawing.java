package shaftwright.study;

import java.util.DoubleSummaryStatistics;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import shaftwright.shaft.InnerFlange;
import shaftwright.suspension.HubAxes;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;
import shaftwright.travel.WheelMotion;
import shaftwright.units.LengthUnit;

/**
 * What the drawing of a side shows: a scenario at full droop, ride and full bump, as far as it is
 * known, as points of the lines that {@link ViewPart} names. Points are ahead of the fore-aft mark,
 * outward from the vehicle's centre plane and above what heights are taken from, mm.
 *
 * <p>Points of a linkage go along with the hub path in use, pitched as the linkage pitches the hub;
 * with a measured path they fit it as well as tape and linkage agree.
 */
public final class SideDrawing {
    /** Which way a figure of the drawing runs. */
    public enum Way {
        AHEAD(Vector::x),
        OUT(Vector::y),
        UP(Vector::z);

        private final ToDoubleFunction<Vector> part;

        Way(ToDoubleFunction<Vector> part) {
            this.part = part;
        }

        /** A point's part this way, mm. */
        public double of(Vector point) {
            return part.applyAsDouble(point);
        }
    }

    /**
     * What is to be drawn.
     *
     * @param motion of the wheel, with the linkage that carries points along it
     * @param origin from where heights and the fore-aft mark are to where the motion's are
     * @param flange the inner one, where the scenario has it
     * @param wheel that turns on the hub
     * @param shaft of the scenario with its travel; without one the whole path is drawn, from datum
     *     to datum
     */
    public record Shown(
            WheelMotion motion,
            Vector origin,
            InnerFlange flange,
            Wheel wheel,
            Optional<SideStudy> shaft) {}

    /**
     * A wheel as it is drawn.
     *
     * @param arm from the outer datum to its centre, along the stub axis, mm
     * @param radius of the tyre, mm; 0 when it is not known
     * @param halfWidth half of the tyre's section, mm; 0 when it is not known
     */
    public record Wheel(double arm, double radius, double halfWidth) {
        /** No wheel: all is at the outer datum. */
        public static final Wheel NONE = new Wheel(0, 0, 0);

        public static Wheel of(WheelFigures figures, shaftwright.build.Wheel wheel) {
            return new Wheel(
                    figures.arm(),
                    wheel.diameter().orElse(0) / 2,
                    wheel.sectionWidth().orElse(0) / 2);
        }
    }

    /**
     * A wheel position.
     *
     * @param travel from ride, mm
     * @param pitch how far the hub has turned about its stub axis, its front up, rad
     * @param datum the outer datum of the hub steered straight ahead
     * @param axes directions that go along with the hub, not pitched and steered straight ahead
     * @param steered the wheel as it is steered
     */
    public record Stand(
            double travel,
            HubPoint hub,
            double pitch,
            Vector datum,
            HubAxes axes,
            Steered steered) {}

    /**
     * A steered wheel.
     *
     * @param face the outer datum of the steered hub
     * @param axes directions that go along with the wheel
     * @param centre of the wheel
     */
    public record Steered(Vector face, HubAxes axes, Vector centre) {
        /** How much camber and toe let the tyre reach farther, in parts of its size. */
        public double tilt() {
            return Math.abs(Math.sin(axes.camber())) + Math.abs(Math.sin(axes.toe()));
        }
    }

    private record Span(double low, double high) {}

    private static final Vector OUTWARD = new Vector(0, 1, 0);

    private final Shown shown;
    private final HubPath path;
    private final Optional<WheelMotion.Carriage> carriage;
    private final LinkageOutline outline;
    private final List<Stand> stands;
    private final Map<Way, Span> spans = new EnumMap<>(Way.class);

    /** Found when first asked for. */
    private List<Vector> points;

    private SideDrawing(Shown shown) {
        this.shown = shown;
        path = shown.motion.path();
        carriage = shown.motion.linkage();
        outline =
                new LinkageOutline(
                        carriage.map(WheelMotion.Carriage::linkage)
                                .map(Linkage::members)
                                .orElse(List.of()));
        stands = List.of(standAt(lowest()), standAt(0), standAt(highest()));
        for (Way way : Way.values()) {
            spans.put(way, span(way));
        }
    }

    /** Draws a side. */
    public static SideDrawing of(Shown shown) {
        return new SideDrawing(shown);
    }

    private double lowest() {
        return shown.shaft.map(shaft -> Math.max(path.tMin(), shaft.droop())).orElse(path.tMin());
    }

    private double highest() {
        return shown.shaft
                .filter(shaft -> !shaft.bumpSteps().isEmpty())
                .map(shaft -> Math.min(path.tMax(), shaft.bump()))
                .orElse(path.tMax());
    }

    private Stand standAt(double travel) {
        HubPoint hub = path.at(travel);
        HubAxes axes = HubAxes.of(hub.camber(), hub.toe());
        Vector datum = datum(hub);
        Vector face = datum.plus(steer().datum(axes));
        HubAxes wheel = HubAxes.along(steer().stubAxis(axes));
        Steered steered = new Steered(face, wheel, wheel.from(face, shown.wheel.arm, 0, 0));
        return new Stand(travel, hub, pitch(travel), datum, axes, steered);
    }

    private Vector datum(HubPoint hub) {
        double reach = Math.sqrt(Math.max(0, hub.reachSquared()));
        return measuredFlange()
                .plus(new Vector(hub.foreAft(), reach, hub.rise()))
                .plus(hubShift(), OUTWARD);
    }

    /** The inner datum where it was measured. */
    private Vector measuredFlange() {
        WheelMotion motion = shown.motion;
        return motion.carriesPoints() ? shown.origin.plus(motion.innerDatum()) : shown.origin;
    }

    private double pitch(double travel) {
        return pitch().at(linkageNorm(travel));
    }

    /** Travel normalised to the linkage's and not beyond its ends; 0 without a linkage. */
    public double linkageNorm(double travel) {
        return carriage.map(carried -> carried.solved().path().normalised(travel))
                .map(norm -> Math.max(-1, Math.min(1, norm)))
                .orElse(0.0);
    }

    /** The path that is drawn. */
    public HubPath path() {
        return path;
    }

    /** How far the hub pitches along the linkage's travel; 0 without a linkage. */
    public Polynomial pitch() {
        return carriage.map(carried -> carried.solved().pitch()).orElse(Polynomial.ZERO);
    }

    /** Whether points of a linkage are drawn. */
    public boolean linked() {
        return carriage.isPresent();
    }

    /** Whether joints, shifts and travel of the scenario shown are known. */
    public boolean hasShaft() {
        return shown.shaft.isPresent();
    }

    /** The inner flange in the scenario shown. */
    public InnerFlange flange() {
        return shown.flange;
    }

    /** Where the inner joint's flange is held. */
    public Vector innerDatum() {
        return measuredFlange().plus(shown.flange.shift());
    }

    /** How far the hub is steered in the scenario shown. */
    public Steer steer() {
        return shown.shaft
                .flatMap(SideStudy::result)
                .map(result -> result.setup().steer())
                .orElse(Steer.STRAIGHT);
    }

    /** Move of the hub outward in the scenario shown, mm. */
    public double hubShift() {
        return shown.shaft.map(shaft -> shaft.scenario().hubShift()).orElse(0.0);
    }

    /** Inner datum to joint centre, 0 without joints, mm. */
    public double centreIn() {
        return shown.shaft.map(shaft -> shaft.scenario().inner().datumToCentre()).orElse(0.0);
    }

    /** Outer datum to joint centre, 0 without joints, mm. */
    public double centreOut() {
        return shown.shaft.map(shaft -> shaft.scenario().outer().datumToCentre()).orElse(0.0);
    }

    /** The wheel. */
    public Wheel wheel() {
        return shown.wheel;
    }

    /** Full droop, ride or full bump. */
    public Stand stand(int number) {
        return stands.get(number);
    }

    /** A linkage's point from the outer datum, along the hub's axes at ride; empty without one. */
    public Optional<Vector> arm(int point) {
        return typed(point)
                .map(
                        typed -> {
                            Stand ride = stand(ViewPart.RIDE);
                            Vector datum = ride.datum.plus(-hubShift(), OUTWARD);
                            return ride.axes.partsOf(typed.minus(datum));
                        });
    }

    /** A linkage's point at ride, with the hub where it was measured; empty without one. */
    private Optional<Vector> typed(int point) {
        return carriage.map(carried -> carried.linkage().points())
                .filter(points -> point < points.size())
                .map(points -> points.get(point).plus(shown.origin));
    }

    /** Where a linkage's point stands; the outer datum where there is none. */
    public Vector point(int point, int stand) {
        Stand at = stand(stand);
        Optional<Vector> typed = typed(point);
        if (typed.isEmpty()) {
            return at.datum;
        }
        if (!outline.endsOnHub(point)) {
            return typed.get();
        }
        Vector arm = arm(point).orElseThrow();
        return at.axes.pitched(at.pitch).from(at.datum, arm.x(), arm.y(), arm.z());
    }

    /** Least of what is drawn this way, mm. */
    public double low(Way way) {
        return spans.get(way).low;
    }

    /** Most of what is drawn this way, mm. */
    public double high(Way way) {
        return spans.get(way).high;
    }

    private Span span(Way way) {
        DoubleSummaryStatistics places = new DoubleSummaryStatistics();
        DoubleSummaryStatistics wheels = new DoubleSummaryStatistics();
        places.accept(way.of(innerDatum()));
        for (int stand = 0; stand < stands.size(); stand++) {
            wheels.accept(way.of(stand(stand).steered.centre));
            for (int point = 0; point < LinkageKind.MOST_POINTS; point++) {
                places.accept(way.of(point(point, stand)));
            }
        }
        double room = room(way);
        return new Span(
                Math.min(places.getMin(), wheels.getMin() - room),
                Math.max(places.getMax(), wheels.getMax() + room));
    }

    /** How far a tyre reaches from its centre. */
    private double room(Way way) {
        double tilt = 0;
        for (Stand stand : stands) {
            tilt = Math.max(tilt, stand.steered.tilt());
        }
        Wheel tyre = shown.wheel;
        return way == Way.OUT
                ? tyre.halfWidth + tyre.radius * tilt
                : tyre.radius + tyre.halfWidth * tilt;
    }

    /** A frame of squares that are plain numbers of this unit, with room for all. */
    public DrawingFrame frame(LengthUnit unit) {
        return new DrawingFrame(this, unit);
    }

    /** The points of a line; of {@link ViewPart#WAY} they are the same at all stands. */
    public List<Vector> line(ViewPart part, int stand) {
        return points().subList(part.first(stand), part.first(stand) + part.size());
    }

    /** The points of all lines, in the order of {@link ViewPart.Spot#all}. */
    public List<Vector> points() {
        if (points == null) {
            points = ViewPart.Spot.all().stream().map(this::point).toList();
        }
        return points;
    }

    private Vector point(ViewPart.Spot spot) {
        Stand stand = stand(spot.stand());
        return switch (spot.part()) {
            case WAY -> datum(path.at(wayTravel(spot.number())));
            case CHAIN -> chain(stand, spot.number());
            case LINKAGE -> {
                int point = outline.point(spot.number());
                yield point == LinkageOutline.DATUM ? stand.datum : point(point - 1, spot.stand());
            }
            default ->
                    stand.steered.axes.from(
                            stand.steered.centre,
                            shown.wheel.halfWidth * spot.halfWidths(),
                            shown.wheel.radius * spot.radiiAhead(),
                            shown.wheel.radius * spot.radiiUp());
        };
    }

    /** Travel at a point of the outer datum's way, even steps from droop to bump, mm. */
    public double wayTravel(int number) {
        double from = stand(0).travel;
        double to = stand(ViewPart.STANDS - 1).travel;
        return from + (to - from) * number / (ViewPart.WAY.size() - 1);
    }

    private Vector chain(Stand stand, int number) {
        return switch (number) {
            case 0 -> innerDatum();
            case 1 -> innerDatum().plus(centreIn(), shown.flange.axis());
            case 2 -> stand.steered.axes.from(stand.steered.face, -centreOut(), 0, 0);
            case 3 -> stand.steered.face;
            default -> stand.steered.centre;
        };
    }
}

package shaftwright.travel;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkagePath;
import shaftwright.suspension.Vector;

/**
 * How one wheel moves: where its hub goes and how far that is known, and what carries the points
 * near it. A linkage carries all its parts; a measured path carries the upright alone. For one
 * thread at a time, since a linkage is moved.
 */
public final class WheelMotion {
    /** Travels nearer than this count as equal, mm. */
    private static final double NEAR = 5e-7;

    private final HubPath path;
    private final TravelEnds known;
    private final Optional<Carrier> carrier;

    /** Made when first asked for. */
    private Motion motion;

    private WheelMotion(HubPath path, TravelEnds known, Optional<Carrier> carrier) {
        this.path = path;
        this.known = known;
        this.carrier = carrier;
    }

    /**
     * What carries points.
     *
     * @param innerDatum in the frame of {@link CarriedPoint}
     * @param reach travel over which it carries them
     * @param linkage empty when a measured path carries the upright alone
     */
    private record Carrier(
            Vector innerDatum,
            TravelEnds reach,
            Supplier<Motion> motion,
            Optional<Carriage> linkage) {}

    /** A linkage that carries points, solved over its travel. */
    public record Carriage(Linkage linkage, LinkagePath solved) {}

    /**
     * Along a path that was measured.
     *
     * @param centreToDatum vehicle's centre plane to the inner datum, mm; without it no point can
     *     be placed
     */
    public static WheelMotion measured(HubPath path, OptionalDouble centreToDatum) {
        TravelEnds known = TravelEnds.ofReadings(path);
        return new WheelMotion(
                path,
                known,
                centreToDatum.isEmpty()
                        ? Optional.empty()
                        : Optional.of(
                                new Carrier(
                                        new Vector(0, centreToDatum.getAsDouble(), 0),
                                        known,
                                        () -> new PathMotion(path, centreToDatum.getAsDouble()),
                                        Optional.empty())));
    }

    /**
     * Along the path of a linkage.
     *
     * @param path as it counts, doubt included
     */
    public static WheelMotion ofLinkage(HubPath path, Linkage linkage, LinkagePath solved) {
        return new WheelMotion(path, TravelEnds.ofLinkage(path), Optional.empty())
                .carriedBy(linkage, solved);
    }

    /** The same path, along which a linkage carries points as far as it was solved. */
    public WheelMotion carriedBy(Linkage linkage, LinkagePath solved) {
        TravelEnds reach =
                new TravelEnds(
                        new TravelEnds.End(
                                Math.max(known.low(), solved.path().tMin()), known.down().stop()),
                        new TravelEnds.End(
                                Math.min(known.high(), solved.path().tMax()), known.up().stop()));
        return new WheelMotion(
                path,
                known,
                Optional.of(
                        new Carrier(
                                linkage.hub().innerDatum(),
                                reach,
                                () -> new LinkageMotion(linkage),
                                Optional.of(new Carriage(linkage, solved)))));
    }

    /** Where the hub goes. */
    public HubPath path() {
        return path;
    }

    /** The linkage that carries points; empty where none does. */
    public Optional<Carriage> linkage() {
        return carrier.flatMap(Carrier::linkage);
    }

    /** As far as the path is known. */
    public TravelEnds known() {
        return known;
    }

    /** Whether points can be carried. */
    public boolean carriesPoints() {
        return carrier.isPresent();
    }

    /** How points move; only where they {@link #carriesPoints can be carried}. */
    public Motion motion() {
        if (motion == null) {
            motion = carrier.orElseThrow().motion.get();
        }
        return motion;
    }

    /** Travel over which points are carried, likewise. */
    public TravelEnds reach() {
        return carrier.orElseThrow().reach;
    }

    /** The inner datum, in the frame of {@link CarriedPoint}, likewise. */
    public Vector innerDatum() {
        return carrier.orElseThrow().innerDatum;
    }

    /** Whether points can be carried over all of this travel, mm. */
    public boolean carriesPoints(double low, double high) {
        return carriesPoints() && low >= reach().low() - NEAR && high <= reach().high() + NEAR;
    }
}

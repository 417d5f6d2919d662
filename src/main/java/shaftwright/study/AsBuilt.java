package shaftwright.study;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.FinishedShaft;
import shaftwright.build.WheelPlace;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.PlungeState;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.ShaftLine;
import shaftwright.shaft.SideResult;
import shaftwright.suspension.TapeSettings;
import shaftwright.units.LengthUnit;

/**
 * One side's finished shaft, as measured, against what was planned. The shaft as it was cut has
 * another race-centre spacing than planned: each slack moves by the difference, at every position
 * alike, and the joints stand at the angles of that spacing.
 *
 * @param planned the shaft that was to be cut
 * @param measured the shaft that was
 * @param tape how finely the hub path and the play were measured
 */
public record AsBuilt(SideResult planned, FinishedShaft measured, TapeSettings tape) {
    /** Said of a shaft that has slack left both ways. */
    public static final String CLEAR = "neither bottoms nor pulls out";

    /** Begins what is said of one that has none inward, before the length that is missing. */
    public static final String BOTTOMS = "bottoms by ";

    /** The same outward. */
    public static final String PULLS_OUT = "pulls out by ";

    /** How much longer it was cut than planned, mm: by K, else by E, else 0. */
    public double shift() {
        OptionalDouble k = measured.clipToClip();
        OptionalDouble e = measured.endToEnd();
        if (k.isPresent()) {
            return k.getAsDouble() - planned.length().clipToClip();
        }
        return e.isPresent() ? e.getAsDouble() - planned.length().endToEnd() : 0;
    }

    /** Least slack before bottoming of the shaft as cut, mm. */
    public double slackIn() {
        return planned.leastSlackIn().value() - shift();
    }

    /** Least slack before pull-out of the shaft as cut, mm. */
    public double slackOut() {
        return planned.leastSlackOut().value() + shift();
    }

    /** What its length as cut comes to; empty while that was not measured. */
    public Optional<String> sentence(LengthUnit unit) {
        if (!measured.isMeasured()) {
            return Optional.empty();
        }
        if (slackIn() < 0) {
            return Optional.of(BOTTOMS + Wording.length(-slackIn(), unit));
        }
        return Optional.of(slackOut() < 0 ? PULLS_OUT + Wording.length(-slackOut(), unit) : CLEAR);
    }

    /** End play to be expected of the shaft as cut, mm. */
    public double play(WheelPlace place) {
        FittedPosition row = row(place);
        PlungeState in = row.position().inward();
        PlungeState out = row.position().outward();
        return Math.min(
                Math.min(row.slackIn() - shift(), row.slackOut() + shift()),
                Math.min(
                        in.innerTravel() + out.innerTravel(),
                        in.outerTravel() + out.outerTravel()));
    }

    /** Doubt of the hub path there, and of what a mock-up corrected, mm. */
    public double pathDoubt(WheelPlace place) {
        return row(place).position().doubt();
    }

    /** What play may be off by before it says something, mm: path and tape. */
    public double playDoubt(WheelPlace place) {
        return pathDoubt(place) + tape.tapeGraduation();
    }

    /** The same of an angle, rad: gauge, and path and height over the distance of the joints. */
    public double angleDoubt(WheelPlace place) {
        return measured.gauge()
                + (pathDoubt(place) + tape.heightGraduation()) / row(place).position().distance();
    }

    /**
     * Equal push toward both cups' backs of the shaft as cut, mm; empty when it is too short to
     * join the centres at all.
     */
    public OptionalDouble push(WheelPlace place) {
        double spacing = planned.length().spacing() + shift();
        ShaftLine line = row(place).position().line();
        return line.reaches(spacing)
                ? OptionalDouble.of(line.pushIn(spacing))
                : OptionalDouble.empty();
    }

    /** A joint's angle to be expected of the shaft as cut, rad; empty where {@link #push} is. */
    public OptionalDouble angle(WheelPlace place, ShaftEnd end) {
        ShaftLine line = row(place).position().line();
        return push(place).stream()
                .map(push -> end.either(line.innerAngle(push, push), line.outerAngle(push, push)))
                .findAny();
    }

    private FittedPosition row(WheelPlace place) {
        return planned.fitted().get(place.step());
    }

    /** End play measured beside what was to be expected; empty while it was not measured. */
    public Optional<Compared> playCompared(WheelPlace place) {
        return Compared.of(
                measured.at(place).play(), OptionalDouble.of(play(place)), playDoubt(place), true);
    }

    /** The same of a joint's angle; empty too where none is to be expected. */
    public Optional<Compared> angleCompared(WheelPlace place, ShaftEnd end) {
        return Compared.of(
                measured.at(place).angle(end), angle(place, end), angleDoubt(place), false);
    }

    /**
     * A measure beside what was to be expected, mm or rad.
     *
     * @param measured as read
     * @param expected of the shaft as cut
     * @param doubt what they may differ by before it says something
     * @param isLength whether they are lengths; else they are angles
     */
    public record Compared(double measured, double expected, double doubt, boolean isLength) {
        /** Said of a difference that says nothing. */
        public static final String WITHIN = "within the doubt";

        public static final String MORE = " more";
        public static final String LESS = " less";

        /** Follows how much more or less it is. */
        public static final String BEYOND = " than expected, beyond the doubt";

        /** Differences nearer to the doubt than this do not count, mm or rad. */
        private static final double PER_UNIT = 1e6;

        private static Optional<Compared> of(
                OptionalDouble measured, OptionalDouble expected, double doubt, boolean isLength) {
            return measured.isEmpty() || expected.isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                            new Compared(
                                    measured.getAsDouble(),
                                    expected.getAsDouble(),
                                    doubt,
                                    isLength));
        }

        /** Whether they differ by more than the doubt, to a millionth of a mm or rad. */
        public boolean isBeyond() {
            return Math.rint((Math.abs(measured - expected) - doubt) * PER_UNIT) > 0;
        }

        /** How they differ. */
        public String sentence(LengthUnit unit) {
            if (!isBeyond()) {
                return WITHIN;
            }
            double off = Math.abs(measured - expected);
            return (isLength ? Wording.length(off, unit) : Wording.angle(off))
                    + (measured > expected ? MORE : LESS)
                    + BEYOND;
        }
    }
}

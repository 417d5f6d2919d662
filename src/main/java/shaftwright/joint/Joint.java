package shaftwright.joint;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * A plunging joint as the catalogue has it.
 *
 * @param name type and size, such as "102 mm six-ball plunging joint"
 * @param bodyDiameter outside diameter, mm; 0 when not given
 * @param raceHalfWidth race centre to the face that bears on the ring, mm ({@code r})
 * @param datumOffset datum face to joint centre, toward the other end of the shaft, mm ({@code a})
 * @param cupBottom joint centre to the nearest thing that the shaft's end can hit, mm; positive
 *     infinity when there is none ({@code d_cup})
 * @param cupRadius radius of the cup's bore that the end of a tilted shaft must clear, mm; empty
 *     when not known
 * @param lip a step in the cup, if there is one
 * @param mouth joint centre to the rim of the cup, toward the cup's back, mm; empty when not known
 * @param angleMax angle never to be exceeded, rad
 * @param angleContinuous angle that may be run for good, rad
 * @param outwardStop what ends the outward travel
 * @param bench travel limits over angle
 * @param splines spline count of the race; 0 when not given
 * @param mass kg; 0 when not given
 * @param price in the builder's currency, empty when it is not known
 * @param spacer thickness of the spacer between it and its cup, mm, which datum offset, cup bottom,
 *     lip and mouth count with; 0 for none
 * @param mating what it must meet, as far as that is known
 */
public record Joint(
        String name,
        double bodyDiameter,
        double raceHalfWidth,
        double datumOffset,
        double cupBottom,
        OptionalDouble cupRadius,
        Optional<CupLip> lip,
        OptionalDouble mouth,
        double angleMax,
        double angleContinuous,
        OutwardStop outwardStop,
        BenchTable bench,
        int splines,
        double mass,
        OptionalDouble price,
        double spacer,
        Mating mating) {
    public Joint {
        Require.named("joint name", name);
        Require.notNegative("joint body diameter", bodyDiameter);
        Require.positive("race half width", raceHalfWidth);
        Require.finite("datum offset", datumOffset);
        if (!(cupBottom > 0)) {
            throw new IllegalArgumentException(
                    "cup bottom must lie beyond the joint centre; have " + cupBottom);
        }
        if (cupRadius.isPresent()) {
            Require.positive("cup radius", cupRadius.getAsDouble());
        }
        if (mouth.isPresent()) {
            Require.finite("cup mouth", mouth.getAsDouble());
        }
        if (!(angleMax > 0 && angleMax < Math.PI / 2)) {
            throw new IllegalArgumentException(
                    "angle limit must lie between 0 and a right angle; have " + angleMax);
        }
        Require.noMoreThan("continuous angle", angleContinuous, "the angle limit", angleMax);
        if (splines < 0) {
            throw new IllegalArgumentException("spline count must not be negative: " + splines);
        }
        Require.notNegative("joint mass", mass);
        price.ifPresent(amount -> Require.notNegative("joint price", amount));
        Require.notNegative("spacer between joint and cup", spacer);
    }

    /**
     * The joint with a spacer between it and its cup, in place of one that is there: everything in
     * the cup moves away from the joint centre by its thickness.
     *
     * @param thickness mm, 0 or more
     * @throws IllegalArgumentException if it is negative
     */
    public Joint behindSpacer(double thickness) {
        double more = thickness - spacer;
        if (more == 0) {
            return this;
        }
        Builder behind = toBuilder().datumOffset(datumOffset + more).cupBottom(cupBottom + more);
        behind.spacer = thickness;
        lip.ifPresent(step -> behind.lip(new CupLip(step.radius(), step.depth() + more)));
        mouth.ifPresent(rim -> behind.mouth(rim + more));
        return behind.build();
    }

    /**
     * A joint of this name, of which nothing is known but what every joint has.
     *
     * @param raceHalfWidth race centre to the face that bears on the ring, mm
     * @param bench travel limits over angle
     * @param angleMax angle never to be exceeded, rad; it may be run for good until {@link
     *     Builder#angleContinuous} says less
     */
    public static Builder named(
            String name, double raceHalfWidth, BenchTable bench, double angleMax) {
        return new Builder(name, raceHalfWidth, bench, angleMax);
    }

    /** The same joint, to change something of it. */
    public Builder toBuilder() {
        Builder builder =
                named(name, raceHalfWidth, bench, angleMax)
                        .bodyDiameter(bodyDiameter)
                        .datumOffset(datumOffset)
                        .cupBottom(cupBottom)
                        .angleContinuous(angleContinuous)
                        .outwardStop(outwardStop)
                        .splines(splines)
                        .mass(mass)
                        .mating(mating);
        builder.spacer = spacer;
        price.ifPresent(builder::price);
        cupRadius.ifPresent(builder::cupRadius);
        lip.ifPresent(builder::lip);
        mouth.ifPresent(builder::mouth);
        return builder;
    }

    /** Gathers a joint. What is not said is not known, or none. */
    public static final class Builder {
        private final String name;
        private final double raceHalfWidth;
        private final BenchTable bench;
        private final double angleMax;
        private double bodyDiameter;
        private double datumOffset;
        private double cupBottom = Double.POSITIVE_INFINITY;
        private OptionalDouble cupRadius = OptionalDouble.empty();
        private Optional<CupLip> lip = Optional.empty();
        private OptionalDouble mouth = OptionalDouble.empty();
        private double angleContinuous;
        private OutwardStop outwardStop = OutwardStop.HARD;
        private int splines;
        private double mass;
        private OptionalDouble price = OptionalDouble.empty();
        private double spacer;
        private Mating mating = Mating.UNKNOWN;

        private Builder(String name, double raceHalfWidth, BenchTable bench, double angleMax) {
            this.name = name;
            this.raceHalfWidth = raceHalfWidth;
            this.bench = bench;
            this.angleMax = angleMax;
            angleContinuous = angleMax;
        }

        /** Outside, mm. */
        public Builder bodyDiameter(double diameter) {
            bodyDiameter = diameter;
            return this;
        }

        /** Datum face to joint centre, toward the other end of the shaft, mm. */
        public Builder datumOffset(double offset) {
            datumOffset = offset;
            return this;
        }

        /** Joint centre to the nearest thing that the shaft's end can hit, mm. */
        public Builder cupBottom(double distance) {
            cupBottom = distance;
            return this;
        }

        /** Of the cup's bore, mm. */
        public Builder cupRadius(double radius) {
            cupRadius = OptionalDouble.of(radius);
            return this;
        }

        public Builder lip(CupLip step) {
            lip = Optional.of(step);
            return this;
        }

        /** Joint centre to the rim of the cup, toward the cup's back, mm. */
        public Builder mouth(double rim) {
            mouth = OptionalDouble.of(rim);
            return this;
        }

        /** That may be run for good, rad. */
        public Builder angleContinuous(double angle) {
            angleContinuous = angle;
            return this;
        }

        public Builder outwardStop(OutwardStop stop) {
            outwardStop = stop;
            return this;
        }

        /** Count in the race. */
        public Builder splines(int count) {
            splines = count;
            return this;
        }

        /** In kg. */
        public Builder mass(double kilograms) {
            mass = kilograms;
            return this;
        }

        /** What it must meet. */
        public Builder mating(Mating known) {
            mating = known;
            return this;
        }

        /** In the builder's currency. */
        public Builder price(double amount) {
            price = OptionalDouble.of(amount);
            return this;
        }

        /**
         * The joint.
         *
         * @throws IllegalArgumentException if a size is none of its kind
         * @throws shaftwright.units.ContradictingSizesException if the continuous angle lies beyond
         *     the angle limit
         */
        public Joint build() {
            return new Joint(
                    name,
                    bodyDiameter,
                    raceHalfWidth,
                    datumOffset,
                    cupBottom,
                    cupRadius,
                    lip,
                    mouth,
                    angleMax,
                    angleContinuous,
                    outwardStop,
                    bench,
                    splines,
                    mass,
                    price,
                    spacer,
                    mating);
        }
    }
}

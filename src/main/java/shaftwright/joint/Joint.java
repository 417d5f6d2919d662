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
 * @param price in the builder's currency; 0 when not given
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
        double price) {
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
        Require.within("continuous angle", angleContinuous, 0, angleMax);
        if (splines < 0) {
            throw new IllegalArgumentException("spline count must not be negative: " + splines);
        }
        Require.notNegative("joint mass", mass);
        Require.notNegative("joint price", price);
    }

    /**
     * The joint with a spacer between it and its cup: everything in the cup moves away from the
     * joint centre by its thickness.
     *
     * @param thickness mm, 0 or more
     * @throws IllegalArgumentException if it is negative
     */
    public Joint behindSpacer(double thickness) {
        if (Require.notNegative("spacer between joint and cup", thickness) == 0) {
            return this;
        }
        return new Joint(
                name,
                bodyDiameter,
                raceHalfWidth,
                datumOffset + thickness,
                cupBottom + thickness,
                cupRadius,
                lip.isEmpty()
                        ? lip
                        : Optional.of(
                                new CupLip(lip.get().radius(), lip.get().depth() + thickness)),
                mouth.isEmpty() ? mouth : OptionalDouble.of(mouth.getAsDouble() + thickness),
                angleMax,
                angleContinuous,
                outwardStop,
                bench,
                splines,
                mass,
                price);
    }
}

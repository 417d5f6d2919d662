package shaftwright.build;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.shaft.InnerFlange;
import shaftwright.suspension.Kingpin;
import shaftwright.units.Require;

/**
 * What all scenarios have in common beside readings and parts.
 *
 * @param flange the transaxle's flange where it was measured, alike in both sides' views
 * @param hubFaceOffset outer datum to the hub's mounting face along the stub axis, mm, empty when
 *     it is not known
 * @param clearance under the vehicle
 * @param widthLimit what the vehicle may measure over its tyres, mm, empty when there is no limit
 * @param kingpin line about which the hubs are steered, empty when it is not known
 * @param driven flanges of transaxle and hubs that the joints bolt to
 */
public record Vehicle(
        InnerFlange flange,
        OptionalDouble hubFaceOffset,
        GroundClearance clearance,
        OptionalDouble widthLimit,
        Optional<Kingpin> kingpin,
        DrivenFlanges driven) {
    /** A vehicle whose flange stands square, and of which nothing else is known. */
    public static final Vehicle PLAIN =
            new Vehicle(
                    InnerFlange.of(0, 0),
                    OptionalDouble.empty(),
                    GroundClearance.UNKNOWN,
                    OptionalDouble.empty(),
                    Optional.empty(),
                    DrivenFlanges.UNKNOWN);

    public Vehicle {
        widthLimit.ifPresent(limit -> Require.positive("width limit", limit));
    }
}

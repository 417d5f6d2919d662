package shaftwright.mockup;

import java.util.Optional;
import shaftwright.joint.MountedJoint;
import shaftwright.units.Require;

/**
 * One end of a stick.
 *
 * @param stop what stops the race inboard, empty while that was not said
 * @param racePlay how far the race can slide on the stick between pin and stop, mm
 * @param stub stick beyond the face of the pin that the race bears on, to the stick's end, mm
 * @param diameter of the stick's end, mm
 */
public record StickEnd(Optional<RaceStop> stop, double racePlay, double stub, double diameter) {
    public StickEnd {
        Require.notNegative("play of a race on the stick", racePlay);
        Require.notNegative("stub of the stick", stub);
        Require.notNegative("end diameter of the stick", diameter);
    }

    /** Whether it pushes the race into its cup. */
    boolean pushes() {
        return stop.isPresent() && stop.get() != RaceStop.NOTHING;
    }

    /** The joint with this end in it, the race at its inboard stop, as when it is pushed in. */
    MountedJoint in(MountedJoint joint) {
        return joint.withEnd(stub + racePlay, diameter);
    }
}

package shaftwright.build;

import java.util.List;
import shaftwright.strength.RatingRow;
import shaftwright.units.Require;

/**
 * What the parts of all scenarios are held against, and what is known of parts that all share.
 *
 * @param driveline engine, clutch, gears
 * @param wheel tyre and ground
 * @param running speed and duties
 * @param splines how races sit on their splines
 * @param ownFigures parts that the builder has a figure for
 * @param factorWanted least safety factor of the weakest part
 * @param fatigue what a shaft's fatigue is judged by
 */
public record Loads(
        Driveline driveline,
        WheelLoads wheel,
        Running running,
        SplineUse splines,
        List<RatingRow> ownFigures,
        double factorWanted,
        FatigueUse fatigue) {
    /** Nothing is known, and no part is held against anything. */
    public static final Loads UNKNOWN =
            new Loads(
                    Driveline.UNKNOWN,
                    WheelLoads.UNKNOWN,
                    Running.UNKNOWN,
                    SplineUse.USUAL,
                    List.of(),
                    1,
                    FatigueUse.USUAL);

    public Loads {
        ownFigures = List.copyOf(ownFigures);
        Require.positive("safety factor wanted", factorWanted);
    }

    /** Of shafts whose notches are not known. */
    public Loads(
            Driveline driveline,
            WheelLoads wheel,
            Running running,
            SplineUse splines,
            List<RatingRow> ownFigures,
            double factorWanted) {
        this(driveline, wheel, running, splines, ownFigures, factorWanted, FatigueUse.USUAL);
    }
}

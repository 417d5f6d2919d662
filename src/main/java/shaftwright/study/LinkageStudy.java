package shaftwright.study;

import java.util.Optional;
import shaftwright.build.LinkageAtRide;
import shaftwright.suspension.Calibration;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.LinkagePath;
import shaftwright.suspension.MeasuredPath;

/**
 * A linkage solved, and how that agrees with tape readings of the same side.
 *
 * @param linkage what was solved
 * @param solved its path, without doubt
 * @param calibration the comparison with the readings, where enough of them lie inside its travel
 * @param doubt what the readings make the linkage doubtful by, mm; 0 without readings
 */
public record LinkageStudy(
        LinkageAtRide linkage,
        LinkagePath solved,
        Optional<Calibration> calibration,
        double doubt) {
    /**
     * Solves a linkage and compares it.
     *
     * @param readings of the same side, empty when there are none
     * @throws shaftwright.suspension.UnusableLinkageException if it does not go as far as wanted
     */
    public static LinkageStudy of(LinkageAtRide linkage, Optional<MeasuredPath> readings) {
        LinkagePath solved = solved(linkage);
        Optional<Calibration> calibration =
                readings.filter(measured -> isEnough(solved.path(), measured))
                        .map(measured -> Calibration.of(solved.path(), measured));
        return new LinkageStudy(
                linkage, solved, calibration, calibration.map(Calibration::allowance).orElse(0.0));
    }

    /**
     * Solves a linkage with other points than those of which readings were taken: what tape and
     * linkage differ by with these is the doubt of the others too.
     *
     * @param doubt of the same side with the points that were measured, mm
     * @throws shaftwright.suspension.UnusableLinkageException if it does not go as far as wanted
     */
    public static LinkageStudy doubted(LinkageAtRide linkage, double doubt) {
        return new LinkageStudy(linkage, solved(linkage), Optional.empty(), doubt);
    }

    private static LinkagePath solved(LinkageAtRide linkage) {
        return LinkagePath.of(linkage.linkage(), linkage.lowest(), linkage.highest());
    }

    private static boolean isEnough(HubPath path, MeasuredPath measured) {
        return Calibration.inside(path, measured).size() >= Calibration.LEAST_ROWS;
    }

    /** The path with its doubt, for everything that follows. */
    public HubPath path() {
        return solved.doubted(doubt);
    }
}

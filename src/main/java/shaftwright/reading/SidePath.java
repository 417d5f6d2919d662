package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.book.Problem;
import shaftwright.build.Corner;
import shaftwright.study.CornerStudy;
import shaftwright.study.HubCourse;
import shaftwright.study.PathStudy;
import shaftwright.study.ReadingWording;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.MeasuredPath;
import shaftwright.travel.WheelMotion;
import shaftwright.units.LengthUnit;

/**
 * One side's hub path: the one that everything behind it is computed from, and the two sources that
 * it may come from.
 *
 * @param readings tape readings
 * @param linkage pick-up points
 * @param rows dampers, straps, bump stops and tubes that move with it, as they were read
 * @param corner the chosen path among them, empty while there is none
 */
public record SidePath(
        SideReadings readings,
        SideLinkage linkage,
        RestraintRows rows,
        Optional<CornerStudy> corner) {
    static SidePath of(InputValues inputs, SideReadings readings, List<Problem> problems) {
        return of(inputs, readings, SideLinkage.of(inputs, readings, problems));
    }

    /** The same side with a linkage of its own points, in a scenario that has such. */
    static SidePath own(InputValues inputs, SidePath others, List<Problem> problems) {
        return of(inputs, others.readings, SideLinkage.own(inputs, others, problems));
    }

    private static SidePath of(InputValues inputs, SideReadings readings, SideLinkage linkage) {
        RestraintRows rows = RestraintRows.of(inputs, readings.source(), linkage);
        Optional<WheelMotion> motion =
                linkage.isChosen()
                        ? linkage.motion()
                        : readings.path().map(measured -> motion(measured, readings, linkage));
        return new SidePath(
                readings,
                linkage,
                rows,
                motion.map(wheel -> CornerStudy.of(wheel, rows.surroundings())));
    }

    /** A measured path; a linkage that was solved beside it carries points along it. */
    private static WheelMotion motion(
            MeasuredPath measured, SideReadings readings, SideLinkage linkage) {
        WheelMotion motion =
                WheelMotion.measured(measured.path(), readings.measured().centreToDatum());
        return linkage.carrying(motion);
    }

    /** The right side's while it is the same as the left: what is wrong was said of the left. */
    static SidePath again(InputValues inputs, SideReadings readings) {
        return of(inputs, readings, new ArrayList<>());
    }

    /** The chosen source's path, when it has one. */
    public Optional<HubPath> chosen() {
        return corner.map(hub -> hub.motion().path());
    }

    /** Its dampers, straps, bump stops and tubes. */
    public SideRestraints restraints() {
        return new SideRestraints(rows, corner);
    }

    /** The chosen source's path, when it has one, with its source. */
    Optional<PathStudy> study() {
        return linkage.isChosen() ? linkage.study().map(PathStudy.Solved::new) : readings.study();
    }

    /** Where its hub goes, when that is known. */
    Optional<HubCourse> course() {
        return study().flatMap(path -> corner.map(among -> new HubCourse(path, among)));
    }

    /** What the core needs to work it out: readings, and the linkage where it is chosen. */
    Corner source() {
        Corner read = Corner.of(readings.measured());
        Corner corner =
                linkage.isChosen()
                        ? linkage.atRide().map(read::with).orElse(read)
                        : linkage.study()
                                .map(solved -> read.carriedBy(solved.linkage()))
                                .orElse(read);
        return corner.steeredAbout(linkage.kingpin());
    }

    /** Whether a length may be judged by it: two measured heights are too few. */
    public boolean mayGiveVerdict() {
        return study().map(PathStudy::mayGiveVerdict).orElse(false);
    }

    /** What is said of its readings where something rests on them; empty when they agree. */
    public String readingsSay(LengthUnit unit) {
        return readings.contradiction()
                .filter(found -> !linkage.isChosen())
                .map(found -> ReadingWording.sentence(found, unit))
                .orElse("");
    }
}

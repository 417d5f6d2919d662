package shaftwright.live;

import static shaftwright.contract.Grid.POWER;
import static shaftwright.contract.Grid.SIDE;

import java.util.List;
import java.util.function.ToDoubleFunction;
import shaftwright.contract.Contract;
import shaftwright.formula.Pieces;
import shaftwright.reading.SidePath;
import shaftwright.reading.Sizing;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.Polynomial;

/**
 * One side's hub path from the source that the builder chose, readings or linkage: single figures
 * and curves.
 */
final class ChosenPathLines {
    private ChosenPathLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.PATH_WORK, SIDE);
        LineSet<SidePath> sides = all.of((sizing, index) -> sizing.path(index.side()));
        sides.whole("linkage_used", "Path from the linkage")
                .yes(
                        index ->
                                ReadLines.ownOrLeft(
                                        index.side(),
                                        "IF(path_source%s=\"linkage\",1,0)"
                                                .formatted(Contract.suffix(index.side())),
                                        "{linkage_used@left}"),
                        (side, index) -> side.linkage().isChosen());
        sides.revised(5)
                .text("path_trouble", "What keeps the path from use")
                .is(
                        "IF({linkage_used}=1," + linkageTrouble() + ",{fit_trouble})",
                        side -> side.chosen().isPresent() ? "" : none(side));
        sides.whole("path_ready", "Path usable")
                .yes("IF({path_trouble}=\"\",1,0)", side -> side.chosen().isPresent());
        sides.whole("path_judged", "Good enough for a verdict")
                .yes(
                        "IF(OR({linkage_used}=1,{path_rows}>=3),{path_ready},0)",
                        side -> side.mayGiveVerdict());
        LineSet<HubPath> paths = all.only(Known.PATH, Lacking.NOT_AVAILABLE);
        paths.mm("path_low", "Lowest travel")
                .is(either("{linkage_low}", "{fit_low}"), HubPath::tMin);
        paths.mm("path_high", "Highest travel")
                .is(either("{linkage_high}", "{fit_high}"), HubPath::tMax);
        paths.mm("ride_rise", "Outer above inner at ride")
                .is("{ride_height_used}-{inner_height_used}", HubPath::rideRise);
        LineSet<SidePath> chosen =
                all.only(Known.PATH.inWorkbook(), Lacking.NOT_AVAILABLE)
                        .of((sizing, index) -> sizing.path(index.side()));
        chosen.number("variance_distance", "Variance of a distance")
                .is(
                        either("0", "{fit_variance_distance}"),
                        side -> measured(side, MeasuredPath::distanceVariance));
        chosen.number("variance_height", "Variance of a height")
                .is(
                        either("0", "{fit_variance_height}"),
                        side -> measured(side, MeasuredPath::heightVariance));
        paths.mm("curve_allowance", "Curve allowance")
                .is(either("{linkage_doubt}", "{fit_allowance}"), path -> path.doubt().allowance());
        coefficients(lines);
    }

    /** The figures of the last fill serve as long as nothing that they follow from was changed. */
    private static String linkageTrouble() {
        return Pieces.of("no_linkage", Sizing.NO_LINKAGE)
                .and("current", EngineBlock.CURRENT)
                .and("settings", PathFigureLines.SETTINGS)
                .and("unread", PathFigureLines.UNREAD_SETTING)
                .in(
                        """
                        IF(COUNT({linkage_low},{linkage_high},{linkage_doubt})<3,"<no_linkage>",
                        IF({linkage_stamp}<>"<current>","the linkage was changed: fill again",
                        IF(COUNT(<settings>)<10,"<unread>","")))
                        """);
    }

    private static String either(String linkage, String measured) {
        return "IF({linkage_used}=1," + linkage + "," + measured + ")";
    }

    /** A figure of the readings, 0 of a linkage. */
    private static double measured(SidePath side, ToDoubleFunction<MeasuredPath> figure) {
        return side.linkage().isChosen()
                ? 0
                : figure.applyAsDouble(side.readings().path().orElseThrow());
    }

    /** What is said of a side without a path. */
    static String none(SidePath side) {
        return side.linkage().isChosen() ? Sizing.NO_LINKAGE : Sizing.NO_READINGS;
    }

    /**
     * The path's polynomials by their coefficients in powers of the normalised travel. Everything
     * behind the path reads these and nothing of the sources.
     */
    private static void coefficients(LiveLines lines) {
        LineSet<HubPath> paths =
                LineSet.in(lines, Section.PATH_WORK, POWER).only(Known.PATH, Lacking.NOT_AVAILABLE);
        for (HubCurve curve :
                List.of(HubCurve.CAMBER, HubCurve.TOE, HubCurve.REACH_SQUARED, HubCurve.FORE_AFT)) {
            paths.number("coef_" + curve.word, "Coefficient of " + curve.inSentence)
                    .is(
                            either("{linkage_" + curve.word + "}", "{fit_" + curve.word + "}"),
                            (path, index) ->
                                    curve.of(path, Polynomial.ZERO).coefficient(index.row()));
        }
        // A linkage has no readings whose places could make its curves doubtful.
        LineSet<FitDoubt> doubts = paths.of((path, index) -> path.doubt());
        doubts.number("coef_hat", "Coefficient of the variance of squared reach")
                .byRow(either("0", "{fit_hat}"), (doubt, row) -> doubt.variance().coefficient(row));
        doubts.since(2)
                .number("coef_shift", "Coefficient of the shift without suspect readings")
                .byRow(either("0", "{fit_shift}"), (doubt, row) -> doubt.shift().coefficient(row));
    }
}

package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shaftwright.book.Problem;
import shaftwright.build.LinkageAtRide;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.study.LinkageStudy;
import shaftwright.study.PathStudy;
import shaftwright.suspension.BallJoint;
import shaftwright.suspension.Calibration;
import shaftwright.suspension.HubAtRide;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Kingpin;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.LinkageOffset;
import shaftwright.suspension.LinkagePath;
import shaftwright.suspension.LinkageRemark;
import shaftwright.suspension.LinkageStop;
import shaftwright.suspension.OffsetEstimate;
import shaftwright.suspension.UnusableLinkageException;
import shaftwright.suspension.Vector;
import shaftwright.travel.WheelMotion;
import shaftwright.units.LengthUnit;

/**
 * One side's linkage by its typed points, its path when it has one, and how that agrees with the
 * side's tape readings. Points are seen from the inner datum's fore-aft place and height and from
 * the vehicle's centre plane.
 */
public final class SideLinkage {
    private final InputValues inputs;
    private final Side source;
    private final SideReadings readings;
    private final List<Problem> problems;
    private final List<String> missing = new ArrayList<>();
    private final boolean chosen;

    /** Doubt of the same side with the points of all other scenarios, NaN when these are they. */
    private final double doubtOfOthers;

    private String trouble = "";
    private Optional<LinkageAtRide> atRide = Optional.empty();
    private Optional<LinkageStudy> study = Optional.empty();

    private SideLinkage(
            InputValues inputs,
            SideReadings readings,
            double doubtOfOthers,
            List<Problem> problems) {
        this.inputs = inputs;
        this.doubtOfOthers = doubtOfOthers;
        this.readings = readings;
        this.problems = problems;
        source = readings.source();
        chosen = inputs.text("path_source", at(0)).equalsIgnoreCase("linkage");
    }

    /**
     * Reads and solves a side's linkage.
     *
     * @param readings the side's, whose source the linkage shares
     * @param problems where to say what is wrong: an error when the path is to come from the
     *     linkage, else a warning
     */
    static SideLinkage of(InputValues inputs, SideReadings readings, List<Problem> problems) {
        SideLinkage side = new SideLinkage(inputs, readings, Double.NaN, problems);
        if (side.chosen || side.isTyped()) {
            side.solve();
        }
        return side;
    }

    /**
     * The same with points of which no readings were taken: what tape and linkage differ by with
     * the others is the doubt of this one too.
     */
    static SideLinkage own(InputValues inputs, SidePath others, List<Problem> problems) {
        SideLinkage side =
                new SideLinkage(inputs, others.readings(), others.linkage().doubt(), problems);
        side.solve();
        return side;
    }

    private void solve() {
        Optional<LinkageKind> typed = kind(inputs);
        if (typed.isEmpty()) {
            need("linkage_kind", new Index(Side.LEFT, 0, 0), "one of the kinds");
            return;
        }
        LinkageKind kind = typed.get();
        List<Vector> points = points(kind);
        HubAtRide hub =
                new HubAtRide(
                        new Vector(0, needed("inner_offset", 0), 0),
                        new Vector(
                                needed("outer_ahead", 0) - needed("inner_ahead", 0),
                                needed("outer_out", 0),
                                needed("ride_height", 0) - needed("inner_height", 0)),
                        needed("static_camber", 0),
                        needed("static_toe", 0));
        double down = -single("linkage_down");
        double up = single("linkage_up");
        if (!missing.isEmpty()) {
            return;
        }
        try {
            atRide = Optional.of(LinkageAtRide.of(kind, points, hub, down, up));
            study =
                    Optional.of(
                            Double.isNaN(doubtOfOthers)
                                    ? LinkageStudy.of(atRide.get(), readings.path())
                                    : LinkageStudy.doubted(atRide.get(), doubtOfOthers));
            sayWhenFarOff(study.get().solved());
        } catch (UnusableLinkageException e) {
            e.problems().forEach(this::refused);
        }
    }

    /**
     * The line between the typed ball joints of two wishbones; empty while one of them or the outer
     * datum is not typed.
     */
    Optional<Kingpin> kingpin() {
        if (kind(inputs).filter(LinkageKind.DOUBLE_WISHBONE::equals).isEmpty()) {
            return Optional.empty();
        }
        Vector datum =
                new Vector(typed("outer_ahead", 0), typed("outer_out", 0), typed("ride_height", 0));
        Vector upper = typedPoint(BallJoint.UPPER.row());
        Vector lower = typedPoint(BallJoint.LOWER.row());
        double all = datum.dot(upper) + datum.dot(lower);
        return Double.isNaN(all) ? Optional.empty() : Kingpin.through(lower, upper, datum);
    }

    private Vector typedPoint(int row) {
        return new Vector(
                typed("point_ahead", row), typed("point_out", row), typed("point_height", row));
    }

    /** The typed kind of linkage. */
    public static Optional<LinkageKind> kind(InputValues inputs) {
        return LinkageKind.named(inputs.text("linkage_kind"));
    }

    private List<Vector> points(LinkageKind kind) {
        List<Vector> points = new ArrayList<>();
        for (int row = 0; row < kind.points(); row++) {
            points.add(
                    new Vector(
                            needed("point_ahead", row) - inputs.number("inner_ahead", source, 0),
                            needed("point_out", row),
                            needed("point_height", row)
                                    - inputs.number("inner_height", source, 0)));
        }
        return points;
    }

    private double single(String name) {
        double number = inputs.number(name);
        if (Double.isNaN(number)) {
            need(name, new Index(Side.LEFT, 0, 0), "a length");
        }
        return number;
    }

    private double needed(String name, int row) {
        double number = inputs.number(name, source, row);
        if (Double.isNaN(number)) {
            need(name, at(row), "a length");
        }
        return number;
    }

    /** Something is missing: an error when the linkage is wanted, else it is just not complete. */
    private void need(String name, Index index, String expected) {
        missing.add(subject(name, index.row()));
        if (chosen && !inputs.unreadable(name, index)) {
            problems.add(
                    Problem.error(
                            inputs.place(name, index),
                            subject(name, index.row()),
                            "nothing",
                            expected + "; the hub path is to come from the linkage"));
        }
    }

    private String subject(String name, int row) {
        Input input = Contract.input(name);
        StringBuilder text = new StringBuilder(input.label().toLowerCase(Locale.ROOT));
        if (input.grid() == Grid.LINKAGE_POINT) {
            text.insert(0, ": ").insert(0, kind(inputs).orElseThrow().pointNames().get(row));
        }
        return input.grid().sided()
                ? text.append(", ").append(source.word()).toString()
                : text.toString();
    }

    private void refused(LinkageRemark remark) {
        String found = remark.stop().map(this::words).orElse(remark.text());
        String cell = remark.stop().map(SideLinkage::cell).orElse(cell(remark.kind()));
        trouble = trouble.isEmpty() ? found : trouble + "; " + found;
        Index index =
                Contract.input(cell).grid().sided()
                        ? at(remark.point().orElse(0))
                        : new Index(Side.LEFT, 0, 0);
        String subject = "linkage, " + source.word();
        String expected = expected(remark.kind());
        problems.add(
                chosen
                        ? Problem.error(inputs.place(cell, index), subject, found, expected)
                        : Problem.warning(inputs.place(cell, index), subject, found, expected));
    }

    private String words(LinkageStop stop) {
        return stop.part()
                + " can't reach at "
                + inputs.shownLength(Math.abs(stop.wanted()))
                + (stop.wanted() > 0 ? " bump" : " droop")
                + ", the linkage goes to "
                + inputs.shownLength(Math.abs(stop.reached()));
    }

    private static String cell(LinkageStop stop) {
        return stop.wanted() > 0 ? "linkage_up" : "linkage_down";
    }

    private static String cell(LinkageRemark.Kind kind) {
        return switch (kind) {
            case WRONG_SIDE -> "point_out";
            case INNER_BEYOND_OUTER -> "outer_out";
            case BAD_ANGLE -> "static_camber";
            case TRAVEL_REVERSED -> "linkage_down";
            default -> "point_ahead";
        };
    }

    private static String expected(LinkageRemark.Kind kind) {
        return switch (kind) {
            case OUT_OF_REACH -> "less travel solved, or other points";
            case TRAVEL_REVERSED -> "some travel up and some down, 2 m in all at most";
            default -> "points of one linkage at ride; measure them again";
        };
    }

    private void sayWhenFarOff(LinkagePath path) {
        if (chosen && !path.isClose()) {
            problems.add(
                    Problem.warning(
                            inputs.place("linkage_up", new Index(Side.LEFT, 0, 0)),
                            "linkage, " + source.word(),
                            "curves that are up to "
                                    + inputs.shownLength(path.lengthError())
                                    + " off the linkage",
                            "less travel solved: so near a dead centre no curve follows closely"));
        }
    }

    private Index at(int row) {
        return new Index(source, 0, row);
    }

    /** Whether the side's hub path is to come from the linkage. */
    public boolean isChosen() {
        return chosen;
    }

    /** Whether any point's height is typed. */
    public boolean isTyped() {
        for (int row = 0; row < Grid.LINKAGE_POINT.rows(); row++) {
            if (!Double.isNaN(typed("point_height", row))) {
                return true;
            }
        }
        return false;
    }

    /** Typed number of the side's, NaN when empty. */
    public double typed(String name, int row) {
        return inputs.number(name, source, row);
    }

    /** From where heights and the fore-aft mark are to where points are seen from, mm. */
    Vector origin() {
        return new Vector(orZero(typed("inner_ahead", 0)), 0, orZero(typed("inner_height", 0)));
    }

    private static double orZero(double typed) {
        return Double.isNaN(typed) ? 0 : typed;
    }

    /** The linkage, when its points make one. */
    public Optional<Linkage> linkage() {
        return atRide.map(LinkageAtRide::linkage);
    }

    /** The same with the travel to be solved. */
    Optional<LinkageAtRide> atRide() {
        return atRide;
    }

    /** The linkage solved, when it goes as far as wanted. */
    public Optional<LinkageStudy> study() {
        return study;
    }

    /** Whether something moves points that are fast to this part. */
    boolean carries(String part) {
        return part.equals(Linkage.FRAME)
                || part.equals(Linkage.HUB)
                || (study.isPresent()
                        && study.get().linkage().linkage().members().stream()
                                .anyMatch(member -> member.name().equals(part)));
    }

    /** The wheel along its path with the readings' doubt, when there is one. */
    Optional<WheelMotion> motion() {
        return study.map(solved -> new PathStudy.Solved(solved).motion(OptionalDouble.empty()));
    }

    /** A motion along another path, with points carried by this where it was solved. */
    WheelMotion carrying(WheelMotion motion) {
        return study.map(solved -> motion.carriedBy(solved.linkage().linkage(), solved.solved()))
                .orElse(motion);
    }

    /** Its path, when it has one. */
    public Optional<LinkagePath> path() {
        return study.map(LinkageStudy::solved);
    }

    /** The comparison with the readings, when there are both. */
    public Optional<Calibration> calibration() {
        return study.flatMap(LinkageStudy::calibration);
    }

    /** What the readings make the linkage doubtful by, mm; 0 without readings. */
    public double doubt() {
        return study.map(LinkageStudy::doubt)
                .orElse(Double.isNaN(doubtOfOthers) ? 0 : doubtOfOthers);
    }

    /** The path with that doubt, when there is one. */
    public Optional<HubPath> doubtedPath() {
        return study.map(LinkageStudy::path);
    }

    /** What became of the points, in one sentence. */
    public String status() {
        if (study.isPresent()) {
            LinkagePath path = study.get().solved();
            LengthUnit unit = inputs.unit();
            return kind(inputs).orElseThrow().tradeName()
                    + ": curves within "
                    + decimals(path.lengthError() / unit.mm(), unit == LengthUnit.INCH ? 5 : 4)
                    + " "
                    + unit.symbol()
                    + " and "
                    + decimals(Math.toDegrees(path.angleError()), 5)
                    + "° of the linkage"
                    + (path.isClose() ? "." : ", which is much: solve less travel.");
        }
        if (!missing.isEmpty()) {
            return "not complete: "
                    + missing.get(0)
                    + (missing.size() > 1 ? " and " + (missing.size() - 1) + " more." : ".");
        }
        return trouble + ".";
    }

    /** Rounded up, so that "within" stays true. */
    private static String decimals(double value, int digits) {
        return java.math.BigDecimal.valueOf(value)
                .setScale(digits, java.math.RoundingMode.UP)
                .toPlainString();
    }

    /** How tape and linkage agree, in a sentence or two; empty when there are not both. */
    public String agreement() {
        return calibration().map(this::agreement).orElse("");
    }

    private String agreement(Calibration calibration) {
        String differ =
                "the "
                        + calibration.rows()
                        + " readings are typically off the linkage by "
                        + length(calibration.offBefore())
                        + "; tape error accounts for "
                        + length(calibration.tape())
                        + leftOut(calibration.leftOut());
        return switch (calibration.agreement()) {
            case WITHIN_TAPE -> "Tape and linkage agree: " + differ + ".";
            case WITH_OFFSETS ->
                    "Tape and linkage would agree with the offsets below: "
                            + differ
                            + ", and "
                            + length(calibration.offAfter())
                            + " would remain. Measure flange and datum again.";
            case DIFFERENT ->
                    "Tape and linkage do not agree: "
                            + differ
                            + ", worst at "
                            + length(Math.abs(calibration.worstTravel()))
                            + (calibration.worstTravel() > 0 ? " bump" : " droop")
                            + ". A point or a reading is wrong.";
        };
    }

    private static String leftOut(List<Integer> rows) {
        if (rows.isEmpty()) {
            return "";
        }
        String numbers = rows.stream().map(String::valueOf).collect(Collectors.joining(" and "));
        return " (without the suspect row" + (rows.size() > 1 ? "s " : " ") + numbers + ")";
    }

    /** Which offsets the readings can't tell apart; empty when they tell all. */
    public String untold() {
        return calibration()
                .map(Calibration::untold)
                .filter(untold -> !untold.isEmpty())
                .map(untold -> "The readings can't tell " + combinations(untold) + ".")
                .orElse("");
    }

    private static String combinations(List<Set<LinkageOffset>> untold) {
        return untold.stream()
                .map(
                        sharing ->
                                sharing.stream()
                                        .map(LinkageOffset::word)
                                        .collect(Collectors.joining(" from ")))
                .collect(Collectors.joining(", nor "));
    }

    /** What they tell only of several offsets together; empty when each is told alone. */
    public String together() {
        return calibration().stream()
                .flatMap(calibration -> calibration.together().stream())
                .map(this::told)
                .collect(Collectors.joining("; "));
    }

    /** The offsets that the readings tell, alone or together, each with its ±. */
    public String offsets() {
        return calibration().map(this::offsets).orElse("");
    }

    private String offsets(Calibration calibration) {
        String told =
                Stream.concat(
                                Stream.of(
                                                calibration.flangeOut(),
                                                calibration.flangeUp(),
                                                calibration.datumOut())
                                        .filter(OffsetEstimate::isTold),
                                calibration.together().stream())
                        .map(this::told)
                        .collect(Collectors.joining("; "));
        return told.isEmpty() ? "" : "Offsets, ± one standard uncertainty: " + told + ".";
    }

    private String told(OffsetEstimate estimate) {
        return estimate.words()
                + " "
                + length(estimate.value())
                + " ± "
                + length(estimate.uncertainty());
    }

    private String length(double mm) {
        return inputs.shownLength(mm);
    }
}

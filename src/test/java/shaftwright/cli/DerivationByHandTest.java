package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.build.Side;
import shaftwright.filling.Filling;
import shaftwright.study.Derivation;
import shaftwright.study.DerivationStep;
import shaftwright.suspension.HubPoint;
import shaftwright.xlsx.XlsxBook;

/**
 * Works each step of a printed page again from the rounded figures that stand on it, as somebody
 * with a pocket calculator would; vectors by Hipparchus.
 */
class DerivationByHandTest {
    private static final int INNER = 0;
    private static final int OUTER = 1;

    /** Groups of positions. */
    private static final int LONGEST = 0;

    private static final int SHORTEST = 1;

    @TempDir private Path folder;

    /** A page of the terminal, with the step of one unit's last decimal. */
    private record Page(List<String> lines, double length) {
        private static final int INDENT = 4;
        private static final int GROUP = 38;
        private static final int FIGURE = 12;
        private static final double DEGREES = 0.01;

        /** Where the figures of a step begin. */
        private int first(DerivationStep step) {
            int words = 0;
            while (!lines.get(words).startsWith("  " + start(step))) {
                words++;
            }
            int first = words + 1;
            while (!lines.get(first).matches(" {4}(?! {2}[a-z-]).*")) {
                first++;
            }
            return first;
        }

        /** A group's figures of a step; NaN where nothing stands. */
        double[] group(DerivationStep step, int group) {
            return group(lines.get(first(step)), group);
        }

        private static double[] group(String line, int group) {
            return IntStream.range(0, 3)
                    .mapToDouble(at -> figure(line, INDENT + group * GROUP + at * FIGURE))
                    .toArray();
        }

        private static String start(DerivationStep step) {
            return step.words().substring(0, Math.min(40, step.words().length()));
        }

        private static double figure(String line, int from) {
            int end = Math.min(line.length(), from + FIGURE);
            String cell = from < end ? line.substring(from, end).strip() : "";
            assertThat(cell).matches("(-?[0-9.]+( in| mm|°)?)?");
            return cell.isEmpty()
                    ? Double.NaN
                    : Double.parseDouble(cell.replaceAll("( in| mm|°)$", ""));
        }

        double one(DerivationStep step, int group) {
            return group(step, group)[0];
        }

        double one(DerivationStep step) {
            return one(step, 0);
        }

        Vector3D vector(DerivationStep step, int group) {
            return new Vector3D(group(step, group));
        }

        void hasLength(DerivationStep step, int group, double byHand) {
            assertThat(one(step, group)).as(step.name()).isCloseTo(byHand, within(4 * length));
        }

        void hasLengths(DerivationStep step, int group, Vector3D byHand) {
            assertThat(vector(step, group).subtract(byHand).getNormInf())
                    .as(step.name())
                    .isLessThan(4 * length);
        }

        /** Angle of a direction to the axes at both ends. */
        void hasAngles(DerivationStep step, int group, Vector3D shaft) {
            Vector3D[] axes = {
                vector(DerivationStep.AXIS, 0), vector(DerivationStep.STUB_AXIS, group)
            };
            for (int end = 0; end < 2; end++) {
                double along = shaft.dotProduct(axes[end]);
                double off = shaft.subtract(along, axes[end]).getNorm();
                assertThat(group(step, group)[end])
                        .as(step.name())
                        .isCloseTo(Math.toDegrees(Math.atan(off / along)), within(1.5 * DEGREES));
            }
        }

        /** Travel of a race by the bench rows of an end, straight between them. */
        double race(int end, double angle, int way) {
            List<double[]> rows = new ArrayList<>();
            int line = first(DerivationStep.BENCH);
            while (!lines.get(line).isEmpty()) {
                rows.add(group(lines.get(line++), end));
            }
            rows.removeIf(figures -> Double.isNaN(figures[0]));
            int upper = 1;
            while (upper < rows.size() - 1 && angle > rows.get(upper)[0]) {
                upper++;
            }
            double[] below = rows.get(upper - 1);
            double[] above = rows.get(upper);
            double share = (angle - below[0]) / (above[0] - below[0]);
            int column = way > 0 ? 1 : 2;
            double race = below[column] + share * (above[column] - below[column]);
            return way > 0 ? race : race + one(DerivationStep.BOOT, end);
        }

        double shaftEnd(int end, double angle) {
            double radians = Math.toRadians(angle);
            return one(DerivationStep.CUP, end)
                    - one(DerivationStep.OVERHANG, end) * Math.cos(radians)
                    - one(DerivationStep.END_RADIUS, end) * Math.sin(radians);
        }

        double travel(int end, double angle, int way) {
            double race = race(end, angle, way);
            return way > 0 ? Math.min(race, shaftEnd(end, angle)) : race;
        }

        int way(int end, int group) {
            return (int) group(DerivationStep.WAY, group)[end];
        }

        /** {@code d + s_i X_i u + s_o X_o n}. */
        Vector3D shaft(DerivationStep travels, int group) {
            double[] travel = group(travels, group);
            return vector(DerivationStep.APART, group)
                    .add(way(INNER, group) * travel[INNER], vector(DerivationStep.AXIS, 0))
                    .add(
                            way(OUTER, group) * travel[OUTER],
                            vector(DerivationStep.STUB_AXIS, group));
        }

        double seatsAndStubs() {
            return sum(DerivationStep.SEAT) + sum(DerivationStep.STUB);
        }

        double sum(DerivationStep step) {
            return one(step, INNER) + one(step, OUTER);
        }
    }

    private Page page(Path file, String scenario, String side) {
        Run run = Run.of("show", "--explain", "--scenario", scenario, "--side", side, file);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out().lines().filter(line -> !line.startsWith("warning: ")))
                .allSatisfy(line -> assertThat(line).hasSizeLessThan(81));
        return new Page(run.out().lines().toList(), run.out().contains(" mm") ? 0.01 : 0.0001);
    }

    private static HubPoint ride(Path file) {
        return Filling.compute(XlsxBook.open(file))
                .sizing()
                .orElseThrow()
                .scenario(0)
                .side(Side.LEFT)
                .result()
                .orElseThrow()
                .setup()
                .path()
                .at(0);
    }

    private Path changed(String... inputs) {
        List<Object> words = new ArrayList<>(List.of("fill"));
        for (String input : inputs) {
            words.addAll(List.of("--set", input));
        }
        Path file = Demo.inches(folder);
        words.add(file);
        Run run = Run.of(words.toArray());
        assertThat(run.code()).as(run.err()).isZero();
        return file;
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "C"})
    void eachStepOfAFittingShaftFollowsFromTheFiguresAbove(String scenario) {
        for (Path file : List.of(Demo.inches(folder), Demo.millimetres(folder))) {
            whole(page(file, scenario, "left"));
        }
    }

    @Test
    void stepsOfAShaftBetweenOtherJointsFollowToo() {
        whole(page(changed("all_states[E]="), "E", "right"));
    }

    private static void whole(Page page) {
        given(page);
        for (int group = LONGEST; group <= SHORTEST; group++) {
            hub(page, group);
            stubAxis(page, group);
            limit(page, group);
            bound(page, group);
            page.hasLength(
                    DerivationStep.WINDOW,
                    group,
                    page.one(DerivationStep.BOUND, group) + page.seatsAndStubs());
        }
        choice(page);
    }

    @Test
    void limitThatAnotherStateSetsIsSaidToBeSuch() {
        Page page = page(Demo.inches(folder), "E", "right");

        for (int group = LONGEST; group <= SHORTEST; group++) {
            hub(page, group);
            limit(page, group);
        }
        assertThat(String.join(" ", page.lines()).replaceAll(" +", " "))
                .contains(Derivation.ALL_STATES);
        assertThat(page(Demo.inches(folder), "A", "right").lines())
                .noneMatch(line -> line.contains("All states"));
    }

    @Test
    void withoutAWindowTheStepsEndWhereNoLengthFollows() {
        Page page = page(Demo.inches(folder), "B", "left");

        for (int group = LONGEST; group <= SHORTEST; group++) {
            hub(page, group);
            limit(page, group);
            bound(page, group);
        }
        assertThat(page.one(DerivationStep.BOUND, LONGEST))
                .isLessThan(page.one(DerivationStep.BOUND, SHORTEST));
        assertThat(String.join("\n", page.lines()))
                .contains("Does not fit")
                .doesNotContain(DerivationStep.WINDOW.words(), DerivationStep.CHOSEN.words());
    }

    @Test
    void softStopThatAsksForTheLongerShaftIsShownAsTheLimit() {
        Page page = page(changed("joint_outward_stop[1]=soft"), "A", "left");

        assertThat(page.way(INNER, SHORTEST) + page.way(OUTER, SHORTEST)).isZero();
        limit(page, SHORTEST);
        bound(page, SHORTEST);
    }

    @Test
    void limitBetweenTwoRowsFollowsFromAParabola() {
        Page page =
                page(changed("transaxle_up[A]=-1.8", "joint_plunge_residual[1]=1"), "A", "left");

        double[] beside = page.group(DerivationStep.BESIDE, SHORTEST);
        assertThat(page.one(DerivationStep.WITH_MARGIN, SHORTEST))
                .isGreaterThanOrEqualTo(Math.max(beside[0], beside[1]));
        bound(page, SHORTEST);
        assertThat(page.one(DerivationStep.BOUND, SHORTEST))
                .isGreaterThan(page.one(DerivationStep.WITH_MARGIN, SHORTEST));
    }

    @Test
    void steeredHubHasMovedItsDatumAndTurnedItsAxis() {
        Path file =
                changed(
                        "steer_angle[A]=10",
                        "kingpin_inclination=8",
                        "kingpin_caster=5",
                        "kingpin_inward=2",
                        "kingpin_ahead=0.5");
        Page page = page(file, "A", "left");

        assertThat(page.vector(DerivationStep.STEERED, LONGEST).getNorm()).isGreaterThan(0.1);
        for (int group = LONGEST; group <= SHORTEST; group++) {
            hub(page, group);
            steered(page, group, ride(file));
            limit(page, group);
        }
    }

    /** Top of the kingpin line 8° in and 5° back, 2 in inward of the datum and half ahead. */
    private static void steered(Page page, int group, HubPoint ride) {
        double[] tilt = page.group(DerivationStep.TILT, group);
        double camber = Math.toRadians(tilt[0]);
        double toe = Math.toRadians(tilt[1]);
        Rotation fromRide =
                new Rotation(
                        straight(ride.camber(), ride.toe()),
                        ahead(ride.toe()),
                        straight(camber, toe),
                        ahead(toe));
        Vector3D line =
                fromRide.applyTo(
                        new Vector3D(
                                -Math.tan(Math.toRadians(5)), -Math.tan(Math.toRadians(8)), 1));
        Vector3D arm = fromRide.applyTo(new Vector3D(0.5, -2, 0));
        Rotation turn = new Rotation(line, Math.toRadians(10), RotationConvention.VECTOR_OPERATOR);
        assertThat(
                        page.vector(DerivationStep.STUB_AXIS, group)
                                .distance(turn.applyTo(straight(camber, toe))))
                .isLessThan(Math.toRadians(Page.DEGREES));
        // What a hundredth of a degree does over the arm.
        assertThat(
                        page.vector(DerivationStep.STEERED, group)
                                .distance(arm.subtract(turn.applyTo(arm))))
                .isLessThan(0.001);
    }

    private static Vector3D straight(double camber, double toe) {
        return new Vector3D(
                Math.sin(toe) * Math.cos(camber),
                Math.cos(toe) * Math.cos(camber),
                -Math.sin(camber));
    }

    private static Vector3D ahead(double toe) {
        return new Vector3D(Math.cos(toe), -Math.sin(toe), 0);
    }

    private static void given(Page page) {
        for (int end = INNER; end <= OUTER; end++) {
            page.hasLength(
                    DerivationStep.OVERHANG,
                    end,
                    page.one(DerivationStep.SEAT, end) + page.one(DerivationStep.STUB, end));
        }
    }

    /** From the tape to the distance between the joint centres. */
    private static void hub(Page page, int group) {
        page.hasLength(
                DerivationStep.OUTER_HEIGHT,
                group,
                page.one(DerivationStep.HEIGHT, OUTER) + page.one(DerivationStep.TRAVEL, group));
        double[] read = page.group(DerivationStep.READ, group);
        double[] reading = page.group(DerivationStep.NEAREST, group);
        assertThat(read[0]).isCloseTo(read[1], within(250 * page.length()));
        Vector3D curve = page.vector(DerivationStep.BY_CURVE, group);
        assertThat(curve.getZ())
                .isCloseTo(
                        page.one(DerivationStep.OUTER_HEIGHT, group)
                                - page.one(DerivationStep.HEIGHT, INNER),
                        within(4 * page.length()));
        page.hasLength(DerivationStep.DISTANCE, group, curve.getNorm());
        // No distance changes faster than the height does.
        assertThat(Math.abs(page.one(DerivationStep.DISTANCE, group) - read[1]))
                .isLessThanOrEqualTo(
                        Math.abs(page.one(DerivationStep.OUTER_HEIGHT, group) - reading[1])
                                + page.length());
        Vector3D n = page.vector(DerivationStep.STUB_AXIS, group);
        page.hasLengths(
                DerivationStep.APART,
                group,
                curve.add(new Vector3D(0, page.one(DerivationStep.MOVED, OUTER), 0))
                        .add(page.vector(DerivationStep.STEERED, group))
                        .subtract(page.vector(DerivationStep.MOVED, INNER))
                        .subtract(
                                page.one(DerivationStep.CENTRE, INNER),
                                page.vector(DerivationStep.AXIS, 0))
                        .subtract(page.one(DerivationStep.CENTRE, OUTER), n));
        Vector3D d = page.vector(DerivationStep.APART, group);
        page.hasLength(DerivationStep.CENTRE_DISTANCE, group, d.getNorm());
        page.hasAngles(DerivationStep.MIDDLE_ANGLES, group, d);
    }

    private static void stubAxis(Page page, int group) {
        double[] tilt = page.group(DerivationStep.TILT, group);
        double camber = Math.toRadians(tilt[0]);
        double toe = Math.toRadians(tilt[1]);
        assertThat(page.vector(DerivationStep.STUB_AXIS, group).distance(straight(camber, toe)))
                .isLessThan(Math.toRadians(Page.DEGREES));
    }

    /** From the angles to the race spacing with margin and doubt. */
    private static void limit(Page page, int group) {
        for (int end = INNER; end <= OUTER; end++) {
            int way = page.way(end, group);
            double middle = page.group(DerivationStep.MIDDLE_ANGLES, group)[end];
            double angle = page.group(DerivationStep.ANGLES, group)[end];
            assertThat(page.group(DerivationStep.FIRST_TRAVEL, group)[end])
                    .isCloseTo(page.travel(end, middle, way), within(4 * page.length()));
            assertThat(page.group(DerivationStep.RACE, group)[end])
                    .isCloseTo(page.race(end, angle, way), within(4 * page.length()));
            if (way > 0) {
                assertThat(page.group(DerivationStep.SHAFT_END, group)[end])
                        .isCloseTo(page.shaftEnd(end, angle), within(4 * page.length()));
            }
            assertThat(page.group(DerivationStep.TRAVELS, group)[end])
                    .isCloseTo(page.travel(end, angle, way), within(4 * page.length()));
        }
        page.hasAngles(
                DerivationStep.ANGLES, group, page.shaft(DerivationStep.FIRST_TRAVEL, group));
        page.hasLength(
                DerivationStep.SPACING, group, page.shaft(DerivationStep.TRAVELS, group).getNorm());
        double[] margin = page.group(DerivationStep.MARGIN, group);
        double both = margin[0] + margin[1];
        page.hasLength(
                DerivationStep.WITH_MARGIN,
                group,
                page.one(DerivationStep.SPACING, group) + (group == LONGEST ? -both : both));
    }

    private static void bound(Page page, int group) {
        double[] travels = page.group(DerivationStep.BESIDE_TRAVEL, group);
        double[] beside = page.group(DerivationStep.BESIDE, group);
        double t = page.one(DerivationStep.TRAVEL, group);
        double f = page.one(DerivationStep.WITH_MARGIN, group);
        double byHand = f;
        if (!Double.isNaN(beside[0] + beside[1])) {
            double p = (f - beside[0]) / (t - travels[0]);
            double q = (beside[1] - f) / (travels[1] - t);
            double y = (q - p) / (travels[1] - travels[0]);
            double g = p + y * (t - travels[0]);
            byHand = f - g * g / (4 * y);
        }
        page.hasLength(DerivationStep.BOUND, group, byHand);
    }

    private static void choice(Page page) {
        double longest = page.one(DerivationStep.WINDOW, LONGEST);
        double shortest = page.one(DerivationStep.WINDOW, SHORTEST);
        page.hasLength(
                DerivationStep.WANTED,
                0,
                shortest + page.one(DerivationStep.PREFERENCE) * (longest - shortest));
        double increment = page.one(DerivationStep.INCREMENT);
        page.hasLength(
                DerivationStep.CHOSEN,
                0,
                Math.rint(page.one(DerivationStep.WANTED) / increment) * increment);
        page.hasLength(
                DerivationStep.CLIP_TO_CLIP,
                0,
                page.one(DerivationStep.CHOSEN) - page.sum(DerivationStep.STUB));
        double[] stubs = page.group(DerivationStep.CARD_STUB, 0);
        page.hasLength(
                DerivationStep.CARD_END,
                0,
                page.one(DerivationStep.CARD_CLIP) + stubs[INNER] + stubs[OUTER]);
        page.hasLength(
                DerivationStep.CARD_SPACING,
                0,
                page.one(DerivationStep.CARD_CLIP) - page.sum(DerivationStep.SEAT));
        double spacing = page.one(DerivationStep.CARD_SPACING);
        page.hasLength(
                DerivationStep.SLACK, LONGEST, page.one(DerivationStep.SPACING, LONGEST) - spacing);
        page.hasLength(
                DerivationStep.SLACK,
                SHORTEST,
                spacing - page.one(DerivationStep.SPACING, SHORTEST));
    }
}

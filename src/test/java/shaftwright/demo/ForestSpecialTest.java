package shaftwright.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shaftwright.demo.ForestSpecialReadings.Side;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.TapeRow;
import shaftwright.suspension.TapeSettings;

class ForestSpecialTest {
    private static final double SIXTEENTH = ForestSpecialReadings.INCH / 16;

    static List<Side> sides() {
        return List.of(ForestSpecialReadings.LEFT, ForestSpecialReadings.RIGHT);
    }

    @ParameterizedTest
    @MethodSource("sides")
    void readingsOfTheDemoAreThoseOfTheLinkage(Side side) {
        Map<String, Object> inputs = DemoInputs.values();
        ForestSpecialReadings.columns(side)
                .forEach((name, column) -> assertThat(inputs.get(name)).as(name).isEqualTo(column));
        assertThat(inputs)
                .containsEntry("inner_height_" + side.name(), ForestSpecialReadings.INNER_HEIGHT)
                .containsEntry("ride_height_" + side.name(), side.rideHeight());
        Object offset = inputs.get("inner_offset_" + side.name());
        assertThat(ForestSpecialReadings.inches((String) offset)).isEqualTo(side.innerOffset());
    }

    @ParameterizedTest
    @MethodSource("sides")
    void pointsOfTheDemoAreThoseOfTheLinkage(Side side) {
        Map<String, Object> inputs = DemoInputs.values();
        ForestSpecialReadings.linkage(side)
                .forEach(
                        (name, column) ->
                                assertThat(inputs.get(name))
                                        .as(name)
                                        .isEqualTo(column.size() == 1 ? column.get(0) : column));
    }

    @ParameterizedTest
    @MethodSource("sides")
    void everyLinkKeepsItsLengthOverTheTravel(Side side) {
        for (double z = -185; z <= 85; z += 15) {
            ForestSpecialLinkage.Pose pose = side.linkage().at(z);
            assertThat(pose.datum().getZ()).isCloseTo(z, within(1e-9));
            for (ForestSpecialLinkage.Link link : side.linkage().links()) {
                Vector3D moved = pose.at(link.upright(), ForestSpecialLinkage.DATUM);
                assertThat(Vector3D.distance(moved, link.chassis()))
                        .isCloseTo(link.length(), within(1e-9));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("sides")
    void measuredPathKeepsToItsDoubtAboutTheTrueOne(Side side) {
        MeasuredPath measured = measured(side);
        double ride = ForestSpecialReadings.inches(side.rideHeight());
        double inner = ForestSpecialReadings.inches(ForestSpecialReadings.INNER_HEIGHT);
        for (int i = 0; i <= 26; i++) {
            double t = measured.path().tMin() + measured.path().travel() * i / 26;
            ForestSpecialLinkage.Pose pose = side.linkage().at(ride + t - inner);
            var point = measured.path().at(t);
            assertThat(point.distance())
                    .as("distance at %s mm", t)
                    .isCloseTo(ForestSpecialReadings.distance(side, pose), within(point.doubt()));
            assertThat(point.camber()).isCloseTo(pose.camber(), within(Math.toRadians(0.3)));
            assertThat(point.toe()).isCloseTo(pose.toe(), within(Math.toRadians(0.3)));
        }
    }

    @ParameterizedTest
    @MethodSource("sides")
    void noReadingIsSuspectAndRideLiesInTheMiddleThird(Side side) {
        MeasuredPath measured = measured(side);
        assertThat(measured.contradiction().exists()).isFalse();
        assertThat(measured.warnings()).isEmpty();
        assertThat(measured.path().travel()).isCloseTo(260, within(4.0));
        assertThat(measured.path().normalised(0)).isBetween(-1 / 3.0, 1 / 3.0);
    }

    @Test
    void columnsOfATableAreOfOneLength() {
        Map<String, Object> inputs = DemoInputs.values();
        for (String table : List.of("joint_", "bench_", "boot_", "blank_", "scenario")) {
            List<Integer> lengths = new ArrayList<>();
            inputs.forEach(
                    (name, value) -> {
                        if (value instanceof List<?> column && belongs(name, table)) {
                            lengths.add(column.size());
                        }
                    });
            assertThat(lengths).as(table).isNotEmpty().containsOnly(lengths.get(0));
        }
    }

    private static boolean belongs(String name, String table) {
        if (!table.equals("scenario")) {
            return name.startsWith(table) && !SCENARIO_ROWS.contains(name);
        }
        return SCENARIO_ROWS.contains(name);
    }

    private static final List<String> SCENARIO_ROWS =
            List.of(
                    "scenario_name",
                    "tyre_size",
                    "tyre_measured",
                    "wheel_offset",
                    "wheel_spacer",
                    "hub_shift",
                    "transaxle_forward",
                    "transaxle_left",
                    "transaxle_up",
                    "joint_inner",
                    "joint_outer",
                    "cup_spacer_inner",
                    "cup_spacer_outer",
                    "joint_spacer_inner",
                    "joint_spacer_outer",
                    "counterbore_inner",
                    "counterbore_outer",
                    "boot_inner",
                    "boot_outer",
                    "stub_inner",
                    "stub_outer",
                    "bump_rule",
                    "bump_limit",
                    "clearance_wanted",
                    "droop_limit",
                    "margin_inward",
                    "margin_outward",
                    "length_bias",
                    "blank_choice",
                    "shaft_pair_price",
                    "other_cost");

    @Test
    void scenariosNameOnlyPartsOfTheCatalogue() {
        Map<String, Object> inputs = DemoInputs.values();
        assertThat(inputs).containsKeys(SCENARIO_ROWS.toArray(new String[0]));
        assertThat(texts(inputs, "joint_name"))
                .containsAll(texts(inputs, "joint_inner"))
                .containsAll(texts(inputs, "joint_outer"))
                .containsAll(texts(inputs, "bench_joint"));
        assertThat(texts(inputs, "boot_name"))
                .containsAll(texts(inputs, "boot_inner"))
                .containsAll(texts(inputs, "boot_outer"));
        for (String choice : texts(inputs, "blank_choice")) {
            assertThat(choice).matches(c -> c.equals("auto") || blanks().contains(c));
        }
    }

    private static List<String> blanks() {
        return texts(DemoInputs.values(), "blank_name");
    }

    private static List<String> texts(Map<String, Object> inputs, String name) {
        List<String> texts = new ArrayList<>();
        for (Object entry : (List<?>) inputs.get(name)) {
            texts.add((String) entry);
        }
        return texts;
    }

    static MeasuredPath measured(Side side) {
        Map<String, Object> inputs = DemoInputs.values();
        List<TapeRow> rows = new ArrayList<>();
        for (int i = 0; i < side.heights().size(); i++) {
            List<Double> distances = new ArrayList<>();
            for (String repeat : List.of("first", "second", "third")) {
                String text = (String) entry(inputs, "distance_" + repeat, side, i);
                if (!text.isEmpty()) {
                    distances.add(ForestSpecialReadings.inches(text));
                }
            }
            rows.add(
                    new TapeRow(
                            i + 1,
                            length(inputs, "height", side, i),
                            distances,
                            length(inputs, "fore_aft", side, i),
                            angle(inputs, "camber", side, i),
                            angle(inputs, "toe", side, i)));
        }
        return MeasuredPath.fit(
                rows,
                ForestSpecialReadings.inches(side.rideHeight()),
                ForestSpecialReadings.inches(ForestSpecialReadings.INNER_HEIGHT),
                TapeSettings.of(SIXTEENTH, SIXTEENTH));
    }

    private static Object entry(Map<String, Object> inputs, String name, Side side, int row) {
        return ((List<?>) inputs.get(name + "_" + side.name())).get(row);
    }

    private static double length(Map<String, Object> inputs, String name, Side side, int row) {
        return ForestSpecialReadings.inches((String) entry(inputs, name, side, row));
    }

    private static OptionalDouble angle(
            Map<String, Object> inputs, String name, Side side, int row) {
        return entry(inputs, name, side, row) instanceof Double degrees
                ? OptionalDouble.of(Math.toRadians(degrees))
                : OptionalDouble.empty();
    }
}

package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.filling.Filling;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.SideRestraints;
import shaftwright.reading.Sizing;
import shaftwright.reading.StopSentence;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.StopsAlone;
import shaftwright.travel.TravelStop;
import shaftwright.xlsx.XlsxBook;

/** Dampers, straps and a tube in the demo workbook. Their figures are invented. */
class DampersTest {
    @TempDir private Path folder;

    /** A damper on the lower wishbone, a short strap on the upright, a tube above the shaft. */
    private static Map<String, List<String>> typed() {
        Map<String, List<String>> typed = DemoBook.typed();
        typed.put("restraint_name", List.of("damper", "strap"));
        typed.put("restraint_kind", List.of("damper", "strap"));
        typed.put("restraint_carried_by", List.of("lower wishbone", ""));
        typed.put("restraint_fixed_ahead", List.of("0", "0"));
        typed.put("restraint_fixed_out", List.of("15", "27"));
        typed.put("restraint_fixed_height", List.of("30", "24"));
        typed.put("restraint_moving_ahead", List.of("0", "0"));
        typed.put("restraint_moving_out", List.of("26", "30"));
        typed.put("restraint_moving_height", List.of("14 1/2", "20"));
        typed.put("restraint_shortest", List.of("14", ""));
        typed.put("restraint_longest", List.of("24", "6"));
        typed.put("tube_first_ahead", List.of("0"));
        typed.put("tube_first_out", List.of("10"));
        typed.put("tube_first_height", List.of("26"));
        typed.put("tube_second_ahead", List.of("0"));
        typed.put("tube_second_out", List.of("20"));
        typed.put("tube_second_height", List.of("26"));
        typed.put("tube_diameter", List.of("1"));
        typed.put("tube_carried_by", List.of("frame"));
        typed.put("boot_length", List.of("4", "4", "4", "4"));
        typed.put("boot_diameter", List.of("4", "4", "4", "4"));
        return typed;
    }

    private Path filled(Map<String, List<String>> typed, List<Problem> problems) {
        Path file = folder.resolve("dampers.xlsx");
        DemoBook.write(file, typed, DemoBook.scenarios());
        XlsxBook book = XlsxBook.open(file);
        problems.addAll(Filling.fill(book).problems());
        assertThat(problems).noneMatch(Problem::isError);
        book.save(file);
        return file;
    }

    @Test
    void everyFormulaGivesWhatTheCoreGives() throws Exception {
        Path file = filled(typed(), new ArrayList<>());

        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            assertThat(Agreement.of(XlsxBook.open(file), poi::value).differences()).isEmpty();
        }
    }

    /** Lengths at ride by Pythagoras: 11 out and 15 1/2 up; 3 out and 4 up. */
    @Test
    void aStrapStopsTheWheelAndSaysSo() {
        List<Problem> problems = new ArrayList<>();
        Path file = filled(typed(), problems);

        Sizing sizing = Filling.compute(XlsxBook.open(file)).sizing().orElseThrow();
        List<SideRestraints.Row> rows = sizing.path(Side.LEFT).restraints().rows();
        SideOutcome side = sizing.scenario(0).side(Side.LEFT);
        assertThat(rows.get(0).course().lengthAtRide())
                .isCloseTo(25.4 * Math.hypot(11, 15.5), within(1e-6));
        assertThat(rows.get(0).course().ratioAtRide()).isBetween(-1.0, -0.3);
        assertThat(rows.get(1).course().lengthAtRide()).isCloseTo(25.4 * 5, within(1e-6));
        assertThat(rows.get(1).course().alone().down().stop()).isEqualTo(TravelStop.STRAP_TIGHT);
        assertThat(side.travelAllowed().orElseThrow().down()).isLessThan(40);
        assertThat(StopSentence.of(side.stops().orElseThrow(), side, sizing))
                .startsWith("strap tight at ");
        assertThat(problems)
                .anyMatch(p -> p.toString().contains("strap tight at "))
                .allMatch(p -> !p.toString().contains("not looked at"));
    }

    /** A tube above the shaft: in bump the inner boot rises to it. */
    @Test
    void aBootThatTouchesATubeEndsTheTravel() {
        Map<String, List<String>> typed = typed();
        typed.put("tube_first_height", List.of("23 3/8"));
        typed.put("tube_second_height", List.of("23 3/8"));
        Path file = filled(typed, new ArrayList<>());

        Sizing sizing = Filling.compute(XlsxBook.open(file)).sizing().orElseThrow();
        SideOutcome side = sizing.scenario(0).side(Side.LEFT);
        StopsAlone alone = side.stopsAlone().orElseThrow();
        double boot = alone.of(StopsAlone.Thing.BOOT).orElseThrow().up();
        assertThat(side.travelAllowed().orElseThrow().upStop()).isEqualTo(TravelStop.BOOT_TOUCHES);
        assertThat(boot).isPositive().isEqualTo(side.travelAllowed().orElseThrow().up());
        assertThat(alone.of(StopsAlone.Thing.BOTTOMS).orElseThrow().up()).isGreaterThan(boot);
        assertThat(alone.of(StopsAlone.Thing.RESTRAINT).orElseThrow().down()).isLessThan(40);
        double gap = side.stops().orElseThrow().gap(ShaftEnd.INNER).orElseThrow().least();
        assertThat(gap).isNegative();
    }

    /** In scenario C the bump follows from the clearance that is wanted. */
    @Test
    void aDamperThatClosesEarlyIsSaidBesideWhatSetsTheBump() {
        Map<String, List<String>> typed = typed();
        typed.put("restraint_shortest", List.of("17", ""));
        typed.put("restraint_longest", List.of("24", "13"));
        List<Problem> problems = new ArrayList<>();
        Path file = filled(typed, problems);

        Map<String, Area> names = XlsxBook.open(file).names();
        assertThat(placesOf(problems, "scenario A")).containsOnly(names.get("bump_limit").place(0));
        assertThat(placesOf(problems, "scenario C"))
                .containsOnly(names.get("clearance_wanted").place(2));
    }

    private static List<CellPlace> placesOf(List<Problem> problems, String scenario) {
        List<CellPlace> places = new ArrayList<>();
        for (Problem problem : problems) {
            if (problem.subject().startsWith(scenario)
                    && problem.found().contains("damper closed")) {
                places.add(problem.place().orElseThrow());
            }
        }
        return places;
    }

    @Test
    void whatARowLacksIsNamedByItsCell() {
        Map<String, List<String>> typed = typed();
        typed.put("restraint_moving_out", List.of("", "30"));
        typed.put("restraint_carried_by", List.of("trailing arm", ""));
        typed.put("tube_diameter", List.of());
        List<Problem> problems = new ArrayList<>();
        filled(typed, problems);

        assertThat(problems)
                .anyMatch(p -> p.toString().contains("Moving end from the centreline, row 1"))
                .anyMatch(p -> p.toString().contains("\"trailing arm\""))
                .anyMatch(p -> p.toString().contains("Tube diameter, row 1"));
    }
}

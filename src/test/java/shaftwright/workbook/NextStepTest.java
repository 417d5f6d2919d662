package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.live.LiveLines;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** A blank workbook says one thing at a time what to type next, until there is a verdict. */
class NextStepTest {
    private static final int SCENARIOS = 3;

    /**
     * The cells that README's "No tool needed" lists, in its order, and what is said after each.
     */
    private static final String[][] STEPS = {
        {"scenario_name", "0", "narrow", "Type the name of a joint: Parts A5"},
        {"joint_name", "0", "six-ball", "Joint 1 lacks: race half width (Parts C5)"},
        {"joint_race_half_width", "0", "11", "Joint 1 lacks: datum to joint centre (Parts D5)"},
        {"joint_datum_offset", "0", "20", "Joint 1 lacks: centre to cup bottom (Parts E5)"},
        {"joint_cup_bottom", "0", "60", "Joint 1 lacks: angle limit (Parts J5)"},
        {"joint_angle_max", "0", "25", "Joint 1 lacks: straight plunge, or bench rows (Parts M5)"},
        {"joint_plunge", "0", "45", "Pick an inner joint: Scenarios B25"},
        {"joint_inner", "0", "six-ball", "Pick an outer joint: Scenarios B26"},
        {"joint_outer", "0", "six-ball", "Type the droop travel from ride: Scenarios B42"},
        {"droop_limit", "0", "80", "Type the bump travel from ride: Scenarios B40"},
        {"bump_limit", "0", "80", "Type the height of the inner datum face: Measure B7"},
        {
            "inner_height_left",
            "0",
            "400",
            "Type the height of the outer datum face at ride: Measure B8"
        },
        {"ride_height_left", "0", "380", height("B12")},
        {"height_left", "0", "280", distance("C12")},
        {"distance_first_left", "0", "505", height("B13")},
        {"height_left", "1", "380", distance("C13")},
        {"distance_first_left", "1", "500", height("B14")},
        {"height_left", "2", "480", distance("C14")},
        {"distance_first_left", "2", "504", ""},
    };

    @TempDir Path folder;
    private Path file;
    private Map<String, Area> names;
    private PoiRecalculation poi;

    @BeforeEach
    void blank() throws Exception {
        file = folder.resolve("blank.xlsx");
        NewBook.write(file, LengthUnit.MILLIMETRE, SCENARIOS);
        names = XlsxBook.open(file).names();
        poi = PoiRecalculation.of(file);
    }

    @AfterEach
    void close() throws Exception {
        poi.close();
    }

    @Test
    void readmeCountsTheCells() throws IOException {
        assertThat(Files.readString(Path.of("README.md")))
                .contains("A first verdict needs " + STEPS.length + " cells")
                .contains(listed("joint_inner", "joint_outer"))
                .contains(listed("bump_limit", "droop_limit"))
                .contains(listed("inner_height_left", "ride_height_left"));
    }

    /** Two cells of one sheet as README's table has them. */
    private String listed(String first, String second) {
        CellPlace one = place(first, 0);
        return "| %s %s, %s |".formatted(one.sheet(), one.address(), place(second, 0).address());
    }

    @Test
    void typedInOrderLeadsToAVerdict() {
        assertThat(next()).isEqualTo("Type the name of a variant: Scenarios B3");
        for (String[] step : STEPS) {
            type(step[0], Integer.parseInt(step[1]), step[2]);
            assertThat(next()).as("after %s %s", step[0], step[1]).isEqualTo(step[3]);
        }
        assertThat(said("verdict")).startsWith("Fits");
    }

    /** Start asks for what the scenario's own sentence says is missing. */
    @Test
    void whatIsAskedForIsWhatTheVerdictMisses() {
        Map<String, String> asked =
                Map.of(
                        "Type the droop travel from ride", "droop travel is missing",
                        "Type the bump travel from ride", "bump travel is missing",
                        "Type the height of the inner datum face", "no readings yet",
                        "Type the height of the outer datum face at ride", "no readings yet");
        Set<String> met = new HashSet<>();
        for (String[] step : STEPS) {
            type(step[0], Integer.parseInt(step[1]), step[2]);
            String words = next().replaceFirst(": .*", "");
            if (asked.containsKey(words)) {
                met.add(words);
                assertThat(said("verdict")).startsWith("No verdict: " + asked.get(words));
            }
        }
        assertThat(met).isEqualTo(asked.keySet());
    }

    @Test
    void aFillSaysTheSame() {
        List<String> filled = new ArrayList<>();
        for (String[] step : STEPS) {
            type(step[0], Integer.parseInt(step[1]), step[2]);
            XlsxBook book = XlsxBook.open(file);
            book.write(Map.of(place(step[0], Integer.parseInt(step[1])), value(step[2])));
            book.save(file);
            Filling.Report report = Filling.compute(XlsxBook.open(file));
            if (!report.hasErrors()) {
                CellValue core =
                        LiveLines.all()
                                .line("start_next")
                                .core()
                                .at(report.sizing().orElseThrow(), new Index(Side.LEFT, 0, 0));
                assertThat(core).as("after %s %s", step[0], step[1]).isEqualTo(poi.value(start()));
                filled.add(step[0]);
            }
        }
        assertThat(filled).contains("scenario_name", "joint_outer", "bump_limit", "droop_limit");
    }

    @Test
    void aCellThatCannotBeReadSendsToItsSentence() {
        type("scenario_name", 1, "wide");
        type("joint_name", 0, "six-ball");
        type("joint_cup_bottom", 0, "sixty");
        assertThat(next()).isEqualTo("Read what stands against scenario B below");
    }

    @Test
    void aPickedJointIsAskedForBeforeTheFirst() {
        type("scenario_name", 0, "narrow");
        type("joint_name", 0, "six-ball");
        type("joint_name", 1, "eight-ball");
        type("joint_inner", 0, "eight-ball");
        assertThat(next()).isEqualTo("Joint 2 lacks: race half width (Parts C6)");
        assertThat(said("verdict"))
                .isEqualTo("No verdict: the inner joint lacks: race half width (Parts C6).");
    }

    @Test
    void whatKeepsAScenarioFromUseNamesItsCell() {
        for (String[] step : STEPS) {
            type(step[0], Integer.parseInt(step[1]), step[2]);
        }
        says("inner_height_left", "", "400", "the inner datum's height is missing (Measure B7)");
        says("ride_height_left", "", "380", "the height at ride is missing (Measure B8)");
        sayOfRow("distance_first_left", 1, "", "500", "row 2", "A13", "lacks its height or its");
        sayOfRow("height_left", 2, "380", "480", "row 2", "A13", "stands at the height of another");
        sayOfRow("distance_first_left", 2, "10", "504", "row 3", "A14", "has a distance shorter");
        says("tyre_size", "wide", "", "the tyre size (Scenarios B8) can't be read");
        says("bump_rule", "soft", "", "the bump rule (Scenarios B39) is neither typed nor clear");
        says("mount_load", "coast", "", "what pushes the drive unit (Scenarios B19) is none of");
        says("joint_inner", "ball", "six-ball", "the inner joint (Scenarios B25) is not in the");
        says("boot_outer", "long", "", "the outer boot (Scenarios B34) is not in the boot table");
        says("blank_choice", "stub", "", "the blank (Scenarios B48) is not in the blank table");
        assertThat(said("verdict")).startsWith("Fits");
    }

    private void sayOfRow(
            String name, int row, String wrong, String right, String of, String cell, String what) {
        String begin = of + " of the readings (Measure " + cell.replace('A', 'B') + ") ";
        type(name, row, wrong);
        assertThat(said("verdict")).startsWith("No verdict: " + begin + what);
        type(name, row, right);
    }

    private void says(String name, String wrong, String right, String sentence) {
        type(name, 0, wrong);
        assertThat(said("verdict")).startsWith("No verdict: " + sentence);
        type(name, 0, right);
    }

    @Test
    void theStepIsALinkToItsCell() {
        List<String> cells = new ArrayList<>();
        for (String[] step : STEPS) {
            String cell = said("next_cell");
            assertThat(next()).as("before %s", step[0]).contains(cell.replace('!', ' '));
            cells.add(cell);
            type(step[0], Integer.parseInt(step[1]), step[2]);
        }
        assertThat(cells).contains("Scenarios!B3", "Parts!E5", "Measure!C14", "Scenarios!B42");
        assertThat(said("next_cell")).as("once there is a verdict").isEmpty();
    }

    @Test
    void aSentenceToBeReadIsNoLink() {
        type("scenario_name", 1, "wide");
        type("joint_name", 0, "six-ball");
        type("joint_cup_bottom", 0, "sixty");
        assertThat(said("next_cell")).isEmpty();
    }

    private static String height(String cell) {
        return "Type three heights from full droop to full bump, each with its distance: Measure "
                + cell;
    }

    private static String distance(String cell) {
        return "Type the distance between the faces at that height: Measure " + cell;
    }

    private String next() {
        return said("start_next");
    }

    private CellPlace start() {
        return place("start_next", 0);
    }

    private String said(String name) {
        CellValue said = poi.value(place(name, 0));
        return said instanceof CellValue.Text text ? text.value() : said.toString();
    }

    private void type(String name, int offset, String text) {
        poi.type(place(name, offset), value(text));
    }

    private CellPlace place(String name, int offset) {
        return names.get(name).place(offset);
    }

    private static CellValue value(String text) {
        if (text.isEmpty()) {
            return CellValue.BLANK;
        }
        return Character.isDigit(text.charAt(0))
                ? CellValue.of(Double.parseDouble(text))
                : CellValue.of(text);
    }
}

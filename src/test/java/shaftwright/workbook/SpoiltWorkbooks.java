package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.OpenBook;
import shaftwright.filling.Filling;
import shaftwright.filling.LiveCells;
import shaftwright.live.Section;
import shaftwright.xlsx.XlsxBook;

/**
 * The demo with one thing wrong, so that the tool refuses to fill it. Its live cells must then say
 * in a sentence that there is no verdict, and show no error value where a builder looks.
 */
public final class SpoiltWorkbooks {
    private static final int SCENARIOS = 3;
    private static final CellValue SLIP = CellValue.of("12 3/0");
    private static final CellValue BENCHED = CellValue.of("113 mm six-ball plunging joint");
    private static final CellValue DIVISION = new CellValue.Fault("#DIV/0!");
    private static final CellValue WRONG_VALUE = new CellValue.Fault("#VALUE!");

    /** Where a builder looks for an answer. */
    private static final Set<Section> SHOWN =
            EnumSet.of(
                    Section.START,
                    Section.SCENARIO_RESULTS,
                    Section.TABLES,
                    Section.BLANK_TABLES,
                    Section.MEASURE_NOTES,
                    Section.SHOP_CARD);

    private SpoiltWorkbooks() {}

    /** What a program makes of a cell. */
    public interface Computed {
        CellValue at(CellPlace place);
    }

    /** Whom a slip leaves without a verdict. */
    private enum Spoils {
        NOBODY,
        FIRST_SCENARIO,
        THIRD_SCENARIO,
        EVERYBODY;

        boolean spoils(int scenario) {
            return this == EVERYBODY
                    || (this == FIRST_SCENARIO && scenario == 0)
                    || (this == THIRD_SCENARIO && scenario == 2);
        }
    }

    /** One cell of a name typed over. */
    private record Slip(String name, int offset, CellValue value) {}

    /** A kind of spoilt workbook. */
    private record Kind(String title, Spoils spoils, List<Slip> slips) {}

    /**
     * Files of some kinds.
     *
     * @param first number of the first kind, from 0
     * @param step 1 for every kind from there on, 2 for every other, ...
     */
    public static List<Path> write(Path folder, int first, int step) {
        Path demo = DemoBook.write(folder.resolve("demo-three.xlsx"), DemoBook.typed(), SCENARIOS);
        List<Path> files = new ArrayList<>();
        List<Kind> kinds = kinds();
        for (int number = first; number < kinds.size(); number += step) {
            Kind kind = kinds.get(number);
            XlsxBook book = XlsxBook.open(demo);
            Map<String, Area> names = book.names();
            for (Slip slip : kind.slips()) {
                book.write(Map.of(names.get(slip.name()).place(slip.offset()), slip.value()));
            }
            Path file = folder.resolve(kind.title() + ".xlsx");
            book.save(file);
            files.add(file);
        }
        return files;
    }

    private static List<Kind> kinds() {
        List<Kind> kinds = new ArrayList<>();
        for (CellValue slip : List.of(SLIP, DIVISION, WRONG_VALUE, new CellValue.Truth(true))) {
            String what = slip == SLIP ? "unreadable" : title(slip);
            every(kinds, what + " distance", "distance_first_left", 2, slip);
            every(kinds, what + " height", "height_left", 2, slip);
            every(kinds, what + " camber", "camber_left", 2, slip);
            every(kinds, what + " inner height", "inner_height_left", 0, slip);
            every(kinds, what + " ride height", "ride_height_left", 0, slip);
            every(kinds, what + " tilt", "inner_tilt", 0, slip);
            every(kinds, what + " tape graduation", "tape_graduation", 0, slip);
            every(kinds, what + " shaft end", "shaft_end_diameter_inner", 0, slip);
            every(kinds, what + " ring", "ring_thickness", 0, slip);
            every(kinds, what + " groove", "groove_width", 0, slip);
            every(kinds, what + " increment", "shop_increment", 0, slip);
            first(kinds, what + " droop", "droop_limit", slip);
            first(kinds, what + " bump", "bump_limit", slip);
            first(kinds, what + " margin", "margin_inward", slip);
            first(kinds, what + " tyre", "tyre_size", slip);
            first(kinds, what + " bias", "length_bias", slip);
            first(kinds, what + " joint pick", "joint_inner", slip);
            first(kinds, what + " boot pick", "boot_outer", slip);
            first(kinds, what + " blank pick", "blank_choice", slip);
            first(kinds, what + " rule", "bump_rule", slip);
            // The demo's first and third scenario have the first joint at both ends.
            joint(kinds, what + " race", "joint_race_half_width", slip);
            joint(kinds, what + " cup bottom", "joint_cup_bottom", slip);
            joint(kinds, what + " angle limit", "joint_angle_max", slip);
            add(kinds, what + " plunge", Spoils.FIRST_SCENARIO, "joint_plunge", 0, slip);
            add(kinds, what + " cup radius", Spoils.FIRST_SCENARIO, "joint_cup_radius", 0, slip);
            add(kinds, what + " joint name", Spoils.FIRST_SCENARIO, "joint_name", 0, slip);
            add(kinds, what + " clearance", Spoils.THIRD_SCENARIO, "clearance_ride", 0, slip);
            add(kinds, what + " offset", Spoils.NOBODY, "inner_offset_left", 0, slip);
            add(kinds, what + " limit", Spoils.NOBODY, "width_limit", 0, slip);
            add(kinds, what + " blank length", Spoils.NOBODY, "blank_length", 1, slip);
            add(kinds, what + " blank price", Spoils.NOBODY, "blank_price", 1, slip);
            add(kinds, what + " bench", Spoils.NOBODY, "bench_inward", 1, slip);
            add(kinds, what + " mass", Spoils.FIRST_SCENARIO, "joint_mass", 0, slip);
            add(kinds, what + " joint price", Spoils.FIRST_SCENARIO, "joint_price", 0, slip);
            add(kinds, what + " stop", Spoils.FIRST_SCENARIO, "joint_outward_stop", 0, slip);
            add(kinds, what + " boot", Spoils.FIRST_SCENARIO, "boot_outward_change", 0, slip);
            first(kinds, what + " price", "shaft_pair_price", slip);
            first(kinds, what + " cost", "other_cost", slip);
            first(kinds, what + " shift", "hub_shift", slip);
            first(kinds, what + " steer", "steer_angle", slip);
            first(kinds, what + " load", "mount_load", slip);
            spoilt(kinds, what + " kingpin", "kingpin_inward", slip, "steer_angle", "10");
            spoilt(kinds, what + " mount", "mount_drive_roll", slip, "mount_load", "drive");
            kinds.add(
                    new Kind(
                            what + " bench in use",
                            Spoils.FIRST_SCENARIO,
                            List.of(
                                    new Slip("joint_outer", 0, BENCHED),
                                    new Slip("bench_outward", 3, slip))));
            if (slip != SLIP) {
                Spoils spoils =
                        slip instanceof CellValue.Fault ? Spoils.FIRST_SCENARIO : Spoils.NOBODY;
                add(kinds, what + " name", spoils, "scenario_name", 0, slip);
                add(kinds, what + " card letter", Spoils.NOBODY, "shop_scenario", 0, slip);
            }
            add(kinds, what + " pin", Spoils.NOBODY, "mockup_pin", 0, slip);
        }
        every(kinds, "no height", "height_left", 2, CellValue.BLANK);
        every(kinds, "no inner height", "inner_height_left", 0, CellValue.BLANK);
        every(kinds, "no ride height", "ride_height_left", 0, CellValue.BLANK);
        every(kinds, "two rows at one height", "height_left", 3, CellValue.of("15 15/16"));
        every(kinds, "distance too short", "distance_first_left", 1, CellValue.of("2"));
        every(kinds, "ride outside", "ride_height_left", 0, CellValue.of("30"));
        first(kinds, "unknown joint", "joint_outer", CellValue.of("some other"));
        first(kinds, "unknown boot", "boot_inner", CellValue.of("some other"));
        first(kinds, "unknown blank", "blank_choice", CellValue.of("some other"));
        joint(kinds, "no race", "joint_race_half_width", CellValue.BLANK);
        joint(kinds, "no plunge", "joint_plunge", CellValue.BLANK);
        return kinds;
    }

    /** A slip that only counts where the first scenario asks for what it says. */
    private static void spoilt(
            List<Kind> kinds, String title, String name, CellValue slip, String ask, String word) {
        kinds.add(
                new Kind(
                        title,
                        Spoils.FIRST_SCENARIO,
                        List.of(new Slip(name, 0, slip), new Slip(ask, 0, CellValue.of(word)))));
    }

    private static String title(CellValue slip) {
        return slip instanceof CellValue.Fault fault
                ? fault.code().replaceAll("[^A-Z]", "").toLowerCase(java.util.Locale.ROOT)
                : "true";
    }

    private static void every(
            List<Kind> kinds, String title, String name, int offset, CellValue value) {
        add(kinds, title, Spoils.EVERYBODY, name, offset, value);
    }

    private static void first(List<Kind> kinds, String title, String name, CellValue value) {
        add(kinds, title, Spoils.FIRST_SCENARIO, name, 0, value);
    }

    private static void joint(List<Kind> kinds, String title, String name, CellValue value) {
        add(kinds, title, Spoils.FIRST_SCENARIO, name, 0, value);
    }

    private static void add(
            List<Kind> kinds,
            String title,
            Spoils spoils,
            String name,
            int offset,
            CellValue value) {
        kinds.add(new Kind(title, spoils, List.of(new Slip(name, offset, value))));
    }

    /** What is wrong with the live cells of a copy that a program computed and saved. */
    public static List<String> complaintsOfSaved(Path file, OpenBook saved) {
        Cells cells = saved.read(LiveCells.areas(saved.names()));
        return complaints(file, place -> cells.at(place).value());
    }

    /**
     * What is wrong with a spoilt workbook's live cells.
     *
     * @param file as written by {@link #write}
     * @param computed what a program makes of its cells
     */
    public static List<String> complaints(Path file, Computed computed) {
        String name = file.getFileName().toString();
        String title = name.substring(0, name.length() - ".xlsx".length());
        Kind kind = kinds().stream().filter(k -> k.title().equals(title)).findFirst().orElseThrow();
        XlsxBook book = XlsxBook.open(file);
        assertThat(Filling.compute(book).hasErrors()).as("%s is refused", title).isTrue();
        List<String> complaints = new ArrayList<>();
        for (LiveCells.Cell cell : Agreement.liveCells(book, SCENARIOS)) {
            if (!SHOWN.contains(cell.line().section()) || !cell.content().hasFormula()) {
                continue;
            }
            CellValue value = computed.at(cell.place());
            if (value instanceof CellValue.Fault && !value.equals(CellValue.NOT_AVAILABLE)) {
                complaints.add(title + ": " + cell.line().name() + cell.index() + " " + value);
            }
            if (cell.line().name().equals("verdict")
                    && kind.spoils().spoils(cell.index().scenario())
                    && !(value instanceof CellValue.Text text
                            && text.value().contains("No verdict: "))) {
                complaints.add(title + ": " + cell.index() + " " + value);
            }
        }
        return complaints.subList(0, Math.min(4, complaints.size()));
    }
}

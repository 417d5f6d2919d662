package shaftwright.workbook;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The demo with mock-up sticks, all figures invented. Left a sliding one in the joints of scenario
 * C, whose races lie 9 mm (0.35 in) nearer than planned; right a fixed one in those of the shop
 * card's scenario, which does as planned but where it is pulled out.
 */
public final class MockUpBook {
    private MockUpBook() {}

    /** Holes 0.354 in closer than 27.177 and 24.811, 27.377 and 24.145, 26.852 and 23.584 in. */
    static Map<String, List<String>> typed() {
        Map<String, List<String>> typed = DemoBook.typed();
        typed.put("stick_scenario_left", List.of("C"));
        typed.put("stick_stop_inner_left", List.of("collar"));
        typed.put("stick_stop_outer_left", List.of("second pin"));
        typed.put("stick_slide_outer_left", List.of("1/16"));
        typed.put("stick_height_left", List.of("14 1/2", "18 5/16", "22"));
        typed.put("stick_holes_in_left", List.of("26 7/8", "27 1/16", "26 9/16"));
        typed.put("stick_holes_out_left", List.of("24 7/16", "", "23 1/4"));
        typed.put("stick_kind_right", List.of("fixed"));
        typed.put("stick_holes_right", List.of("24 5/8"));
        typed.put("stick_stop_inner_right", List.of("tape"));
        typed.put("stick_stop_outer_right", List.of("collar"));
        typed.put("stick_stub_inner_right", List.of("3/4"));
        typed.put("stick_end_inner_right", List.of("1 1/4"));
        typed.put("stick_height_right", List.of("14 1/2", "16 1/2", "20", "9"));
        typed.put("stick_play_right", List.of("1", "1 1/2", "1 1/2", "1"));
        typed.put("stick_inboard_right", List.of("pull", "pull", "bottom", "pull"));
        typed.put("stick_outboard_right", List.of("pull", "bottom", "bottom", "pull"));
        return typed;
    }

    /** The same in which scenario C, and one with other joints, are corrected. */
    public static Map<String, List<String>> corrected() {
        Map<String, List<String>> typed = typed();
        typed.put("stick_corrects", List.of("no", "yes", "yes", "", "yes", ""));
        return typed;
    }

    /** The same with two readings that no stick can have given, and a third row that is right. */
    static Map<String, List<String>> unusable() {
        Map<String, List<String>> typed = corrected();
        typed.put("stick_height_left", List.of("14 1/2", "18 5/16", "22", "19"));
        typed.put("stick_holes_in_left", List.of("24 7/16", "27 1/16", "99", "27"));
        typed.put("stick_holes_out_left", List.of("26 7/8", "", "23 1/4", ""));
        typed.put("stick_play_right", List.of("1", "1 1/2", "30", "1"));
        return typed;
    }

    /** The left stick read at one height only, which nothing checks once it corrects. */
    static Map<String, List<String>> oneReading(String in, String out) {
        Map<String, List<String>> typed = corrected();
        typed.put("stick_height_left", List.of("18 5/16"));
        typed.put("stick_holes_in_left", List.of(in));
        typed.put("stick_holes_out_left", List.of(out));
        return typed;
    }

    public static Path write(Path file, Map<String, List<String>> typed) {
        return DemoBook.write(file, typed, DemoBook.scenarios());
    }
}

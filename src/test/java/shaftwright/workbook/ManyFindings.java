package shaftwright.workbook;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** The demo, spoilt so that findings hold which random workbooks hardly ever bring. */
public final class ManyFindings {
    private ManyFindings() {}

    /**
     * Damper and strap too short, tubes too thick, a short bench table, thin lands, tired and
     * case-hardened shafts and the like.
     */
    public static Path write(Path file) {
        Map<String, List<String>> typed = DemoBook.typed();
        typed.put("restraint_shortest", List.of("16", ""));
        typed.put("restraint_longest", List.of("20 7/8", "12 7/8"));
        typed.put("tube_diameter", List.of("12", "12"));
        typed.put("bench_angle", List.of("0", "4", "8", "9", "10"));
        typed.put("stub_inner", List.of("1/4", "1/2", "1/2", "1/2", "1/2"));
        typed.put("bolt_torque", List.of("95", "95", "31", ""));
        typed.put("factor_wanted", List.of("3"));
        typed.put("width_limit", List.of("70"));
        typed.put("joint_angle_continuous", List.of("5", "5", "5", "5"));
        typed.put("done_springs", List.of("no"));
        typed.put("material_tensile", List.of("213", "180"));
        typed.put("kts_runout", List.of("2.8"));
        typed.put("fatigue_wanted", List.of("4"));
        typed.put("rated_speed_angle", List.of("2000", "2000", "2000", "2000"));
        typed.put(
                "blank_treatment",
                Collections.nCopies(typed.get("blank_name").size(), "case-hardened"));
        // Does not fit, so its card prints nothing.
        typed.put("shop_scenario", List.of("B"));
        typed.put("camber_left", Collections.nCopies(typed.get("camber_left").size(), ""));
        return DemoBook.write(file, typed, DemoBook.scenarios());
    }
}

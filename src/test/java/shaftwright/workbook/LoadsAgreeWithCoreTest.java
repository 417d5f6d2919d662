package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.build.Side;
import shaftwright.filling.Filling;
import shaftwright.reading.Sizing;
import shaftwright.study.FatiguePart;
import shaftwright.study.StrengthStudy;
import shaftwright.xlsx.XlsxBook;

/** Loads that come back, in the demo's workbook: by the core, and by formulas. */
class LoadsAgreeWithCoreTest {
    @TempDir static Path folder;

    /**
     * Brakes inboard, a reverse gear above the lowest, shares of travel, notches by their radii and
     * a row that comes and goes.
     */
    private static Map<String, List<String>> typed() {
        Map<String, List<String>> typed = DemoBook.typed();
        typed.put("brakes_inboard", List.of("yes"));
        typed.put("brake_deceleration", List.of("0.8"));
        typed.put("reverse_gear", List.of("4.4", "3.2", "", "4", "3.8"));
        typed.put("share_bump", List.of("20"));
        typed.put("share_ride", List.of("65"));
        typed.put("share_droop", List.of("15"));
        typed.put("notch_sensitivity", List.of("0.9"));
        typed.put("kts_runout", List.of("2.8"));
        typed.put("radius_shoulder", List.of("1.5 mm"));
        typed.put("radius_groove", List.of("0.2 mm"));
        typed.put("fatigue_surface", List.of("ground"));
        typed.put("fatigue_other", List.of("0.814"));
        typed.put("material_tensile", List.of("213", "180"));
        typed.put("duty_cycle", List.of("repeated", "", "reversed"));
        typed.put("blank_bore", List.of("", "", "8 mm", "", "8 mm"));
        typed.put(
                "blank_treatment",
                List.of("", "case-hardened", "through-hardened", "", "through-hardened"));
        // A groove that lies farther in than the ring's is left where it carries torque.
        typed.put("blank_groove_outer", List.of("", "1 3/8", "", "", "", "", "5/8", ""));
        return typed;
    }

    private static Sizing computed(Path file) {
        return Filling.compute(XlsxBook.open(file)).sizing().orElseThrow();
    }

    @Test
    void formulasSayTheSame() throws Exception {
        Path book = DemoBook.write(folder.resolve("loads.xlsx"), typed(), DemoBook.scenarios());
        StrengthStudy strength = computed(book).scenario(0).strength();

        assertThat(strength.torques().reversing()).isPresent();
        assertThat(strength.torques().braking()).isPresent();
        assertThat(strength.fatigue(Side.LEFT).factor(FatiguePart.SHOULDER_INNER)).isPresent();
        try (PoiRecalculation poi = PoiRecalculation.of(book)) {
            assertThat(Agreement.of(XlsxBook.open(book), poi::value).differences()).isEmpty();
        }
    }

    /** With sharp notches typed and all time in bump; nothing is said of hardness. */
    @Test
    void formulasSayTheSameOfTypedNotches() throws Exception {
        Map<String, List<String>> typed = typed();
        typed.put("kts_shoulder", List.of("1.7"));
        typed.put("kts_groove", List.of("3"));
        typed.put("share_bump", List.of("100"));
        typed.put("share_ride", List.of(""));
        typed.put("share_droop", List.of(""));
        typed.put("brake_torque", List.of("900"));
        typed.put("duty_share", List.of("", "", ""));
        typed.put("blank_treatment", Collections.nCopies(5, ""));
        Path book = DemoBook.write(folder.resolve("typed.xlsx"), typed, DemoBook.scenarios());

        try (PoiRecalculation poi = PoiRecalculation.of(book)) {
            assertThat(Agreement.of(XlsxBook.open(book), poi::value).differences()).isEmpty();
        }
    }
}

package shaftwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.units.LengthUnit;

/** Loads that come back, as a builder might type them into a random workbook. */
final class RandomLoads {
    private final Random random;
    private final LengthUnit unit;
    private final Map<String, List<CellValue>> typed;

    RandomLoads(long seed, LengthUnit unit, Map<String, List<CellValue>> typed) {
        random = new Random(seed * 15_485_863 + 11);
        this.unit = unit;
        this.typed = typed;
    }

    /** Types them beside the rest. */
    void type(int scenarios) {
        one("brakes_inboard", choice(0.5, "yes", "Yes", "no"));
        number("brake_torque", 1, 0.4, 200, 2000);
        number("brake_deceleration", 1, 0.5, 0.3, 1.2);
        number("reverse_gear", scenarios, 0.6, 2, 20);
        shares();
        number("notch_sensitivity", 1, 0.5, 0.6, 1);
        number("kts_bar", 1, 0.3, 1, 1.5);
        number("kts_runout", 1, 0.6, 1, 3);
        number("kts_shoulder", 1, 0.3, 1, 3);
        number("radius_shoulder", 1, 0.7, 0.3, 5);
        number("kts_groove", 1, 0.3, 2, 4);
        number("radius_groove", 1, 0.7, 0.1, 2);
        one("fatigue_surface", choice(0.7, "ground", "Machined", "hot-rolled", "as forged"));
        number("fatigue_other", 1, 0.5, 0.6, 1.3);
        number("fatigue_wanted", 1, 0.4, 0.8, 3);
        number("material_tensile", Grid.MATERIAL.rows(), 0.9, 2000, 2700);
        choices("blank_treatment", Grid.BLANK.rows(), "Case-hardened", "through-hardened", "");
        choices("duty_cycle", Grid.DUTY.rows(), "repeated", "Reversed", "");
        number("rated_speed_angle", Grid.RATED.rows(), 0.6, 500, 8000);
    }

    /** None, those that add up, or ride left out. */
    private void shares() {
        if (random.nextBoolean()) {
            int bump = random.nextInt(50);
            int droop = random.nextInt(50);
            boolean rides = random.nextInt(4) > 0;
            one("share_bump", CellValue.of(rides ? bump : 100 - droop));
            one("share_droop", CellValue.of(droop));
            one("share_ride", rides ? CellValue.of(100 - bump - droop) : CellValue.BLANK);
        }
    }

    private void one(String name, CellValue value) {
        typed.put(name, List.of(value));
    }

    private void choices(String name, int rows, String... words) {
        List<CellValue> values = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            values.add(CellValue.of(words[random.nextInt(words.length)]));
        }
        typed.put(name, values);
    }

    /** Numbers of the units that the contract has, in the workbook's own. */
    private void number(String name, int rows, double share, double least, double most) {
        List<CellValue> values = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            double number = least + random.nextDouble() * (most - least);
            double own = Contract.input(name).kind().typed(number, unit);
            values.add(
                    random.nextDouble() < share
                            ? CellValue.of(Math.rint(own * 1e5) / 1e5)
                            : CellValue.BLANK);
        }
        typed.put(name, values);
    }

    private CellValue choice(double share, String... words) {
        return random.nextDouble() < share
                ? CellValue.of(words[random.nextInt(words.length)])
                : CellValue.BLANK;
    }
}

package shaftwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import shaftwright.book.CellValue;
import shaftwright.contract.MountLoad;
import shaftwright.units.LengthUnit;

/** Steering and give of the mounts in a random workbook, where it has them. */
final class RandomMoves {
    private final Random random;
    private final LengthUnit unit;
    private final Map<String, List<CellValue>> typed;

    RandomMoves(long seed, LengthUnit unit, Map<String, List<CellValue>> typed) {
        random = new Random(seed * 15_485_863 + 5);
        this.unit = unit;
        this.typed = typed;
    }

    void type(int scenarios) {
        boolean steers = often(0.4);
        boolean soft = often(0.5);
        one("kingpin_inclination", steers && often(0.95), -3, 15);
        one("kingpin_caster", steers && often(0.7), -4, 12);
        length("kingpin_inward", steers && often(0.95), 10, 140);
        length("kingpin_ahead", steers && often(0.5), -15, 15);
        for (MountLoad load : List.of(MountLoad.DRIVE, MountLoad.OVERRUN)) {
            length(load.input("forward"), soft && often(0.5), -8, 8);
            length(load.input("left"), soft && often(0.5), -6, 6);
            length(load.input("up"), soft && often(0.7), -10, 10);
            one(load.input("roll"), soft && often(0.5), -3, 3);
        }
        List<CellValue> angles = new ArrayList<>();
        List<CellValue> loads = new ArrayList<>();
        for (int scenario = 0; scenario < scenarios; scenario++) {
            angles.add(steers && often(0.6) ? CellValue.of(between(-18, 18)) : CellValue.BLANK);
            String[] words = {"at rest", "drive", "Drive", "overrun", "OVERRUN"};
            loads.add(
                    often(0.7)
                            ? CellValue.of(words[random.nextInt(words.length)])
                            : CellValue.BLANK);
        }
        typed.put("steer_angle", angles);
        typed.put("mount_load", loads);
    }

    private void one(String name, boolean has, double least, double most) {
        double value = between(least, most);
        typed.put(name, List.of(has ? CellValue.of(value) : CellValue.BLANK));
    }

    private void length(String name, boolean has, double least, double most) {
        double value = between(least, most) / unit.mm();
        typed.put(name, List.of(has ? CellValue.of(value) : CellValue.BLANK));
    }

    private double between(double least, double most) {
        return Math.round(100 * (least + (most - least) * random.nextDouble())) / 100.0;
    }

    private boolean often(double share) {
        return random.nextDouble() < share;
    }
}

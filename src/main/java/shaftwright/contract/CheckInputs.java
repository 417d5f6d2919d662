package shaftwright.contract;

import java.util.List;
import java.util.Locale;
import shaftwright.build.MeasuringCheck;

/** Ticks before measuring, one for each check. */
public final class CheckInputs {
    /** What a builder types behind a check that is so. */
    public static final String TICKED = "yes";

    private CheckInputs() {}

    /** Defined name of the cell that is ticked. */
    public static String name(MeasuringCheck check) {
        return "done_" + check.name().toLowerCase(Locale.ROOT);
    }

    static void declare(List<Input> all) {
        for (MeasuringCheck check : MeasuringCheck.values()) {
            all.add(
                    Input.words(
                            name(check),
                            Grid.BOOK,
                            check.label(),
                            InputKind.CHOICE,
                            List.of(TICKED, "no"),
                            check.meaning()));
        }
    }
}

package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.contract.MeasuringCheck;

/** Checks before measuring that a workbook's builder has not ticked. */
public final class OpenChecks {
    private OpenChecks() {}

    /** Those that are not ticked although there are readings. */
    public static List<MeasuringCheck> of(Sizing sizing) {
        List<MeasuringCheck> open = new ArrayList<>();
        if (sizing.readings(Side.LEFT).path().isPresent()) {
            for (MeasuringCheck check : MeasuringCheck.values()) {
                if (!sizing.inputs().text(check.input()).equalsIgnoreCase("yes")) {
                    open.add(check);
                }
            }
        }
        return open;
    }

    /** Warns of them. */
    static void check(Sizing sizing, List<Problem> problems) {
        List<MeasuringCheck> open = of(sizing);
        if (open.isEmpty()) {
            return;
        }
        StringBuilder warnings = new StringBuilder();
        for (MeasuringCheck check : open) {
            warnings.append(' ').append(check.warning());
        }
        problems.add(
                Problem.warning(
                        sizing.inputs()
                                .placeOrNull(open.get(0).input(), new Index(Side.LEFT, 0, 0)),
                        "before measuring",
                        open.size() + " of " + MeasuringCheck.values().length + " not ticked",
                        "each ticked with yes once it is so." + warnings));
    }
}

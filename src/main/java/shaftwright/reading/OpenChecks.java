package shaftwright.reading;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import shaftwright.book.Problem;
import shaftwright.build.MeasuringCheck;
import shaftwright.build.Side;
import shaftwright.contract.CheckInputs;
import shaftwright.contract.Index;

/** Checks before measuring that a workbook's builder has not ticked. */
public final class OpenChecks {
    private OpenChecks() {}

    /** Those that are not ticked although there are readings. */
    public static Set<MeasuringCheck> of(Sizing sizing) {
        return sizing.readings(Side.LEFT).path().isPresent() ? typed(sizing.inputs()) : Set.of();
    }

    /** Those that are not ticked, in their order. */
    static Set<MeasuringCheck> typed(InputValues inputs) {
        Set<MeasuringCheck> open = EnumSet.noneOf(MeasuringCheck.class);
        for (MeasuringCheck check : MeasuringCheck.values()) {
            if (!inputs.text(CheckInputs.name(check)).equalsIgnoreCase(CheckInputs.TICKED)) {
                open.add(check);
            }
        }
        return open;
    }

    /** Warns of them. */
    static void check(Sizing sizing, List<Problem> problems) {
        Set<MeasuringCheck> open = of(sizing);
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
                                .place(
                                        CheckInputs.name(open.iterator().next()),
                                        new Index(Side.LEFT, 0, 0)),
                        "before measuring",
                        open.size() + " of " + MeasuringCheck.values().length + " not ticked",
                        "yes beside each once it is done." + warnings));
    }
}

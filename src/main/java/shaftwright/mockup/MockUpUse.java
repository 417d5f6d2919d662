package shaftwright.mockup;

import java.util.Optional;
import shaftwright.shaft.WindowCorrection;

/**
 * What a side's mock-up has to do with a scenario: it was built as it, or corrects it.
 *
 * @param check its readings beside the plan
 * @param corrects whether the scenario's window is corrected by them
 */
public record MockUpUse(MockUpCheck check, boolean corrects) {
    /** What is added to the window. */
    public WindowCorrection correction() {
        return corrects ? check.correction() : WindowCorrection.NONE;
    }

    /** The reading that contradicts most, with the correction where there is one. */
    public Optional<StickComparison> worst() {
        return check.worst(corrects);
    }

    /** What may be wrong where readings contradict. */
    public MockUpCheck.Suspicion suspicion() {
        return check.suspicion(corrects);
    }
}

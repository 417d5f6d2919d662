package shaftwright.study;

import java.util.Optional;
import shaftwright.mockup.MockUpCheck.Suspicion;
import shaftwright.mockup.MockUpUse;
import shaftwright.mockup.StickComparison;

/**
 * A mock-up that contradicts the plan.
 *
 * @param worst the reading that does most
 * @param corrected whether the plan is corrected by the mock-up already
 * @param suspicion what may be wrong
 */
public record MockUpFacts(StickComparison worst, boolean corrected, Suspicion suspicion) {
    /** Of a mock-up that contradicts; empty when it does not. */
    static Optional<MockUpFacts> of(MockUpUse use) {
        return use.worst().map(worst -> new MockUpFacts(worst, use.corrects(), use.suspicion()));
    }

    double by() {
        return Math.abs(worst.off(corrected));
    }

    boolean sooner() {
        return worst.sooner(corrected);
    }
}

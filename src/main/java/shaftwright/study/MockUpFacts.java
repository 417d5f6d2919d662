package shaftwright.study;

import java.util.Optional;
import shaftwright.mockup.MockUpCheck.Suspicion;
import shaftwright.mockup.MockUpUse;
import shaftwright.mockup.StickComparison;
import shaftwright.mockup.UnusableReading;

/**
 * A mock-up that contradicts the plan, or has a reading that can't be used, which comes first.
 *
 * @param unusable the reading that can be used least
 * @param contradicting the reading that contradicts most
 * @param corrected whether the plan is corrected by the mock-up already
 * @param suspicion what may be wrong where a reading contradicts
 */
public record MockUpFacts(
        Optional<UnusableReading> unusable,
        Optional<StickComparison> contradicting,
        boolean corrected,
        Suspicion suspicion) {

    /** Of a mock-up with something against it; empty when there is nothing. */
    static Optional<MockUpFacts> of(MockUpUse use) {
        MockUpFacts facts =
                new MockUpFacts(
                        use.check().leastUsable(), use.worst(), use.corrects(), use.suspicion());
        return Optional.of(facts)
                .filter(any -> any.unusable.isPresent() || any.contradicting.isPresent());
    }

    StickComparison worst() {
        return contradicting.orElseThrow();
    }

    double by() {
        return Math.abs(worst().off(corrected));
    }

    boolean sooner() {
        return worst().sooner(corrected);
    }
}

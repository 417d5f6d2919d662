package shaftwright.study;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What comes of one pair of values in a sweep: the graver side's finding and the tighter side's
 * window.
 *
 * @param obstacle the gravest finding that keeps a shaft from being cut, empty when both sides' can
 *     be cut from a blank of the list
 * @param window the narrower length window, mm, negative when no shaft fits; empty where none can
 *     be computed
 */
public record SweepCell(Optional<Finding> obstacle, OptionalDouble window) {
    /** Where sizes contradict each other. */
    private static final SweepCell CONTRADICTION =
            new SweepCell(Optional.of(Finding.INCOMPLETE), OptionalDouble.empty());

    static SweepCell of(Optional<ScenarioStudy> tried) {
        return tried.map(
                        study ->
                                new SweepCell(
                                        study.shaftVerdict().obstacle(), study.narrowerWindow()))
                .orElse(CONTRADICTION);
    }

    public boolean fits() {
        return obstacle.isEmpty();
    }

    /** Whether the path is not known as far as the wheel would travel. */
    public boolean beyondHeights() {
        return obstacle.filter(Finding.BEYOND_PATH::equals).isPresent();
    }
}

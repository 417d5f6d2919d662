package shaftwright.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import shaftwright.study.DerivationStep.Kind;
import shaftwright.study.DerivationStep.Topic;

/**
 * A line of figures on the way from tape readings to a length.
 *
 * @param row from 0 among the lines of its step
 */
public record DerivationLine(DerivationStep step, int row) {
    /** Places of figures, those of the first group before those of the second. */
    public static final int PLACES = 2 * DerivationStep.FIGURES;

    /** Those of a topic, in order. */
    public static List<DerivationLine> of(Topic topic) {
        return Arrays.stream(DerivationStep.values())
                .filter(step -> step.topic() == topic)
                .flatMap(
                        step ->
                                IntStream.range(0, step.rows())
                                        .mapToObj(row -> new DerivationLine(step, row)))
                .toList();
    }

    /** Whether a place is one of the first group. */
    public static boolean isFirst(int place) {
        return place < DerivationStep.FIGURES;
    }

    /** What stands at a place; empty where nothing ever does. */
    public Optional<Kind> kind(int place) {
        List<Kind> kinds = isFirst(place) ? step.first() : step.second();
        int at = place % DerivationStep.FIGURES;
        return at < kinds.size() ? Optional.of(kinds.get(at)) : Optional.empty();
    }
}

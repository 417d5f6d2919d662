package shaftwright.study;

import java.util.Optional;
import java.util.stream.IntStream;
import shaftwright.build.Margins;
import shaftwright.units.LengthUnit;

/**
 * Margins with which a scenario would fit that is short of those that it has. They are no change of
 * the vehicle: what they give up is safety.
 *
 * @param margins the greater one is made smaller first, equal ones shrink alike
 * @param less what both together give up, mm, the least that does in steps of the shop's scale
 */
public record SmallerMargins(Margins margins, double less) {
    /** Lengths nearer than this count as equal, mm. */
    private static final double NEAR = 0.01;

    static Optional<SmallerMargins> of(ScenarioVariants variants, ShopScale scale) {
        boolean isShort =
                variants.now().filter(now -> now.narrowerWindow().orElse(0) < 0).isPresent();
        if (!isShort || variants.build().uncertainty().builtUp().isPresent()) {
            return Optional.empty();
        }
        Margins now = variants.scenario().margins();
        int steps = (int) Math.floor((now.inward() + now.outward() + NEAR) / scale.fine());
        return IntStream.rangeClosed(1, steps)
                .mapToObj(step -> of(now, step * scale.fine()))
                .filter(smaller -> smaller.serve(variants))
                .findFirst();
    }

    /** Equal ones shrink alike; a smaller one is left alone until the other is no greater. */
    private static SmallerMargins of(Margins now, double less) {
        double left = now.inward() + now.outward() - less;
        double smaller = Math.max(0, Math.min(Math.min(now.inward(), now.outward()), left / 2));
        double greater = Math.max(0, left - smaller);
        return new SmallerMargins(
                now.inward() <= now.outward()
                        ? new Margins(smaller, greater)
                        : new Margins(greater, smaller),
                less);
    }

    private boolean serve(ScenarioVariants variants) {
        return variants.tried(now -> now.toBuilder().margins(margins).build())
                .filter(ScenarioStudy::fits)
                .isPresent();
    }

    /** What is to be said of them beside the changes. */
    public String words(LengthUnit unit) {
        return "Margins "
                + ShopScale.shown(less, unit)
                + " smaller in all would do too. How much to keep is your choice: it is safety"
                + " given up, not room gained.";
    }
}

package shaftwright.units;

import java.util.Optional;

/**
 * A step of whole sixty-fourths of an inch, to which a shop with inch tapes cuts. Lengths are in
 * mm; noise of their way through mm, below a millionth of a step, is settled first.
 *
 * @param sixtyFourths how many, at least 1
 */
public record InchStep(int sixtyFourths) {
    private static final int PARTS = 64;
    private static final double SETTLED = 1e6;

    public InchStep {
        if (sixtyFourths < 1) {
            throw new IllegalArgumentException("not a step: " + sixtyFourths + "/64 in");
        }
    }

    /** The step of this many mm, empty unless it is whole sixty-fourths. */
    public static Optional<InchStep> of(double mm) {
        double count = settled(mm / LengthUnit.INCH.mm() * PARTS);
        return count >= 1 && count == Math.rint(count)
                ? Optional.of(new InchStep((int) count))
                : Optional.empty();
    }

    /** A whole number of steps as a fraction, {@code 25 3/8 in}; empty for what lies between. */
    public Optional<String> exact(double mm) {
        double steps = steps(mm);
        return steps == Math.rint(steps) ? Optional.of(text(steps)) : Optional.empty();
    }

    /** The nearest whole number of steps; halves go away from zero. */
    public String nearest(double mm) {
        double steps = steps(mm);
        return text(Math.copySign(Math.floor(Math.abs(steps) + 0.5), steps));
    }

    /** The most whole steps that are no more than this. */
    public String down(double mm) {
        return text(Math.floor(steps(mm)));
    }

    private double steps(double mm) {
        return settled(mm / LengthUnit.INCH.mm() * PARTS / sixtyFourths);
    }

    private static double settled(double number) {
        return Math.copySign(Math.floor(Math.abs(number) * SETTLED + 0.5), number) / SETTLED;
    }

    private String text(double steps) {
        return Length.of(steps * sixtyFourths / PARTS, LengthUnit.INCH)
                .format(LengthStyle.SIXTY_FOURTHS);
    }
}

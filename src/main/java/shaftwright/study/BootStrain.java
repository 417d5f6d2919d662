package shaftwright.study;

import java.util.Optional;
import shaftwright.joint.Boot;
import shaftwright.shaft.Binding;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.units.LengthUnit;

/**
 * What a boot does not take.
 *
 * @param kind what is wrong
 * @param worst by how much at most, mm or rad, and where in the travel
 */
public record BootStrain(Kind kind, Binding worst) {
    /** What is over a limit by less than this, mm or rad, counts as on it. */
    public static final double NEAR = 1e-6;

    /** What may be wrong with a boot, in the order in which it is said. */
    public enum Kind {
        /** Its longest fibre is torn. */
        TOO_SHORT(1, "too short"),
        /** Its folds are pinched. */
        TOO_LONG(2, "too long"),
        BENT_TOO_FAR(3, "bent too far");

        private final int number;
        private final String words;

        Kind(int number, String words) {
            this.number = number;
            this.words = words;
        }

        /** From 1; workbooks hold it as a number. */
        public int number() {
            return number;
        }

        /** As builders say it. */
        public String words() {
            return words;
        }
    }

    /** The first of what is wrong with an end's boot; empty when nothing is, or can be judged. */
    public static Optional<BootStrain> of(SideResult side, ShaftEnd end) {
        Boot boot = side.setup().joint(end).boot();
        return boot.isJudged()
                ? over(Kind.TOO_SHORT, side.greatestOfBoot(end, boot::tooShortBy))
                        .or(() -> over(Kind.TOO_LONG, side.greatestOfBoot(end, boot::tooLongBy)))
                        .or(
                                () ->
                                        over(
                                                Kind.BENT_TOO_FAR,
                                                side.greatestOfBoot(end, boot::bentTooFarBy)))
                : Optional.empty();
    }

    private static Optional<BootStrain> over(Kind kind, Binding worst) {
        return worst.value() > NEAR ? Optional.of(new BootStrain(kind, worst)) : Optional.empty();
    }

    /** By how much: "3.2 mm", "1.5°". */
    String by(LengthUnit unit) {
        return kind == Kind.BENT_TOO_FAR
                ? Wording.angleExcess(worst.value())
                : Wording.excess(worst.value(), unit);
    }
}

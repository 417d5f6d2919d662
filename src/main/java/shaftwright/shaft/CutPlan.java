package shaftwright.shaft;

import java.util.OptionalDouble;

/**
 * How a blank becomes the shaft.
 *
 * @param blank what it is cut from
 * @param row the blank's row in the builder's list, 0 for the first
 * @param length of the finished shaft
 * @param inner what is done to the inner end
 * @param outer what is done to the outer end
 */
public record CutPlan(Blank blank, int row, ShaftLength length, EndCut inner, EndCut outer) {
    /** What is done to an end. */
    public EndCut cut(ShaftEnd end) {
        return end.either(inner, outer);
    }

    /** What is cut off in all, mm. */
    public double scrap() {
        return inner.cut() + outer.cut();
    }

    /** Splined length that is left at an end, mm. */
    public double splineLeft(ShaftEnd end) {
        return blank.end(end).splineLength() - cut(end).cut();
    }

    /** The scrap to the hundredth of a millimetre, by which plans are compared. */
    public double scrapToHundredths() {
        return Rounding.hundredth(scrap());
    }

    /** Number of grooves to cut, 0 to 2. */
    public int newGrooves() {
        return (inner.groove() == GrooveUse.NEW ? 1 : 0)
                + (outer.groove() == GrooveUse.NEW ? 1 : 0);
    }

    /**
     * Diameter in an old groove that stays inboard of an end's ring, where it carries torque, mm;
     * empty without one, or while the teeth's diameter is not known.
     */
    public OptionalDouble neck(ShaftEnd end, RingSpec ring) {
        return cut(end).inboardGroove().isPresent()
                ? blank.end(end).neck(ring.grooveDepth())
                : OptionalDouble.empty();
    }

    /**
     * Distance of the two cross holes of a mock-up stick, mm: {@code K + d_pin}, since the races
     * bear on the pins' sides.
     *
     * @param pinDiameter mm
     */
    public double mockUpHoles(double pinDiameter) {
        return length.clipToClip() + pinDiameter;
    }

    /** The gravest that is against its ends. */
    public GrooveFlaw flaw() {
        return cutsCase() ? GrooveFlaw.CUTS_CASE : GrooveFlaw.of(inner).or(GrooveFlaw.of(outer));
    }

    /** Whether it cuts an end, or a groove, of a blank that is hard on its surface only. */
    public boolean cutsCase() {
        return blank.treatment() == Treatment.CASE_HARDENED
                && (newGrooves() > 0 || Math.max(inner.cut(), outer.cut()) > GroovePlan.TOLERANCE);
    }

    /**
     * Whether this plan is to be preferred: nothing against its ends or the least, fewest new
     * grooves, least scrap to the hundredth of a millimetre, lowest price (a blank without one
     * last), first in the list.
     */
    boolean betterThan(CutPlan that) {
        int flawed = flaw().compareTo(that.flaw());
        if (flawed != 0) {
            return flawed < 0;
        }
        if (newGrooves() != that.newGrooves()) {
            return newGrooves() < that.newGrooves();
        }
        double scrap = scrapToHundredths();
        double otherScrap = that.scrapToHundredths();
        if (scrap != otherScrap) {
            return scrap < otherScrap;
        }
        return blank.cheaperThan(that.blank) || (!that.blank.cheaperThan(blank) && row < that.row);
    }
}

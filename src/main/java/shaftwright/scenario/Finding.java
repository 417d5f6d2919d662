package shaftwright.scenario;

/** What a verdict says, the gravest last. */
public enum Finding {
    /** Everything holds. */
    FITS(0),
    /** It fits, but a joint runs above its running limit at ride height. */
    RUNS_STEEP(1),
    /** The length fits, but no blank gives it. */
    NO_BLANK(2),
    /** The floating shaft can pull a joint without a hard stop past its limit. */
    SOFT_STOP(3),
    /** The tilted shaft end touches the cup. */
    TOUCHES_CUP(4),
    /** The outer joint is too steep. */
    OUTER_ANGLE(5),
    /** The inner joint is too steep. */
    INNER_ANGLE(6),
    /** No length fits. */
    NO_WINDOW(7),
    /** Two heights can't carry a verdict. */
    TWO_HEIGHTS(8),
    /** Something is missing. */
    INCOMPLETE(9),
    /** Nobody asked. */
    UNUSED(10);

    private final int gravity;

    Finding(int gravity) {
        this.gravity = gravity;
    }

    /** Whether a shaft fits that can be cut from a blank of the list. */
    public boolean holds() {
        return gravity <= RUNS_STEEP.gravity;
    }

    /** 0 for {@link #FITS}, rising with gravity. */
    public int gravity() {
        return gravity;
    }
}

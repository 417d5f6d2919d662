package shaftwright.scenario;

/** What a verdict says, the gravest last. */
public enum Finding {
    /** Everything holds. */
    FITS,
    /** It fits, but a joint runs above its running limit at ride height. */
    RUNS_STEEP,
    /** The length fits, but no blank gives it. */
    NO_BLANK,
    /** The floating shaft can pull a joint without a hard stop past its limit. */
    SOFT_STOP,
    /** The tilted shaft end touches the cup. */
    TOUCHES_CUP,
    /** The outer joint is too steep. */
    OUTER_ANGLE,
    /** The inner joint is too steep. */
    INNER_ANGLE,
    /** No length fits. */
    NO_WINDOW,
    /** Two heights can't carry a verdict. */
    TWO_HEIGHTS,
    /** Something is missing. */
    INCOMPLETE,
    /** Nobody asked. */
    UNUSED;

    /** 0 for {@link #FITS}, rising with gravity. */
    public int gravity() {
        return ordinal();
    }
}

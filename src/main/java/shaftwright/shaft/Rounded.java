package shaftwright.shaft;

/** What became of a length when it was to be rounded to the shop increment. */
public enum Rounded {
    /** It stands on an increment inside the window. */
    TO_INCREMENT,
    /** No increment was asked for. */
    NOT_ASKED,
    /** The window holds no whole increment, so the length is not rounded. */
    NO_INCREMENT_FITS,
    /** There is no window, so the length between the crossed limits is not rounded. */
    NO_WINDOW
}

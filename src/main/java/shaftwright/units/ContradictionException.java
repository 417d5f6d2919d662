package shaftwright.units;

/**
 * What a builder measured or wants cannot all be so: sizes, readings or points that contradict each
 * other. No fault of the program that asks, unlike an {@link IllegalArgumentException}; each kind
 * says as data what it found.
 */
public abstract class ContradictionException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /**
     * @param message one clause in plain English without a full stop, lengths in mm
     */
    protected ContradictionException(String message) {
        super(message);
    }
}

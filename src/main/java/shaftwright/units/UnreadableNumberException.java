package shaftwright.units;

/** A text that is no number, with the reason in a builder's words. */
public final class UnreadableNumberException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final String reason;

    UnreadableNumberException(String text, String reason) {
        super("not a number: \"" + text + "\"" + (reason.isEmpty() ? "" : ": " + reason));
        this.reason = reason;
    }

    /** Why it cannot be read, one clause without a full stop; empty where it just is no number. */
    public String reason() {
        return reason;
    }
}

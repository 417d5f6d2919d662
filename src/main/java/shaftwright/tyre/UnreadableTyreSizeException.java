package shaftwright.tyre;

/** A text that is no tyre size, with the reason in a builder's words. */
public final class UnreadableTyreSizeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    /** What would have been read, to end a message with. */
    public static final String EXPECTED =
            "a tyre size such as 235/75 R15, LT235/75R15, 30x9.50-15, 195R14C or 7.50-16";

    private final String text;
    private final String reason;

    UnreadableTyreSizeException(String text, String reason) {
        super("found \"" + text + "\": " + reason + "; expected " + EXPECTED);
        this.text = text;
        this.reason = reason;
    }

    /** The text as it was written. */
    public String text() {
        return text;
    }

    /** Why it cannot be read, one clause without a full stop. */
    public String reason() {
        return reason;
    }
}

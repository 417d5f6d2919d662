package shaftwright.units;

/** A text that is no length, with the reason in a builder's words. */
public final class UnreadableLengthException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    /** What would have been read, to end a message with. */
    public static final String EXPECTED =
            "a length such as 25 3/8, 25-3/8\", 25.375 in, 2' 1 3/8\" or 645 mm";

    private final String text;
    private final String reason;

    UnreadableLengthException(String text, String reason) {
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

package shaftwright.cli;

/** A file of inputs that can't be read. */
final class UnreadableInputException extends RuntimeException {
    private static final long serialVersionUID = 1;

    UnreadableInputException(String message, Throwable cause) {
        super(message, cause);
    }
}

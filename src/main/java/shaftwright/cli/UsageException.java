package shaftwright.cli;

import java.util.List;

/** A command line that can't be carried out, with everything that is wrong with it. */
final class UsageException extends RuntimeException {
    private static final long serialVersionUID = 1;

    UsageException(String message) {
        super(message);
    }

    /** One message of several lines. */
    UsageException(List<String> messages) {
        super(String.join("\nshaftwright: ", messages));
    }
}

package shaftwright.functions;

/** Ends a function's computation with an error for its cell. */
final class NoValueException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Value.Fault fault;

    NoValueException(Value.Fault fault, String reason) {
        // Thousands of cells may show errors while somebody types; no stack is kept of each.
        super(reason, null, false, false);
        this.fault = fault;
    }

    Value.Fault fault() {
        return fault;
    }
}

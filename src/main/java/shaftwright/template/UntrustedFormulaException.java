package shaftwright.template;

/** A formula whose value here might not be the one that a spreadsheet program computes. */
final class UntrustedFormulaException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UntrustedFormulaException(String why) {
        super(why);
    }
}

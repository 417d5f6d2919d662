package shaftwright.study;

/** How much a finding weighs, the gravest first. */
public enum Severity {
    /** Nothing can be judged. */
    NO_VERDICT("No verdict"),
    /** The shaft must not be cut: it breaks something, or no length works. */
    DOES_NOT_FIT("Does not fit"),
    /** What was measured or mocked up contradicts itself. */
    MEASURE_AGAIN("Measure again before cutting"),
    /** The shaft fits; something else wants a decision first. */
    FITS_BUT("Fits, but"),
    /** Nothing was found. */
    FITS("Fits");

    private final String words;

    Severity(String words) {
        this.words = words;
    }

    /** As a verdict begins. */
    public String words() {
        return words;
    }

    /** The same before the sentence that says why. */
    public String lead() {
        return this == FITS_BUT ? words + " " : words + ": ";
    }

    /** Whether a side of this severity weighs more than one of that. */
    public boolean graverThan(Severity that) {
        return compareTo(that) < 0;
    }
}

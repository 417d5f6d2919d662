package shaftwright.study;

import java.util.Locale;

/** How much a finding weighs, the gravest first. */
public enum Severity {
    /** Nothing can be judged. */
    NO_VERDICT(4, "No verdict"),
    /** The shaft must not be cut: it breaks something, or no length works. */
    DOES_NOT_FIT(3, "Does not fit"),
    /** What was measured or mocked up contradicts itself. */
    MEASURE_AGAIN(2, "Measure again before cutting"),
    /** The shaft fits; something else wants a decision first. */
    FITS_BUT(1, "Fits, but"),
    /** Nothing was found. */
    FITS(0, "Fits");

    private final int level;
    private final String words;

    Severity(int level, String words) {
        this.level = level;
        this.words = words;
    }

    /** 0 for what fits, rising with gravity; workbooks hold it as a number. */
    public int level() {
        return level;
    }

    /**
     * The severity of this level.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Severity ofLevel(int level) {
        for (Severity severity : values()) {
            if (severity.level == level) {
                return severity;
            }
        }
        throw new IllegalArgumentException("no severity has level " + level);
    }

    /** As a verdict begins. */
    public String words() {
        return words;
    }

    /** The same before the sentence that says why. */
    public String lead() {
        return this == FITS_BUT ? words + " " : words + ": ";
    }

    /** A sentence behind it. */
    String led(String sentence) {
        return lead() + sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    /** The same above a list that says why. */
    public String heading() {
        return words + ":";
    }

    /** Whether a side of this severity weighs more than one of that. */
    public boolean graverThan(Severity that) {
        return compareTo(that) < 0;
    }
}

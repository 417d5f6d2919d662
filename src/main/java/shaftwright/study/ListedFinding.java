package shaftwright.study;

import java.util.Comparator;

/**
 * A finding of a scenario as it stands in a list: once for both sides where they read alike.
 *
 * @param finding what was found
 * @param on the sides that it was found on
 * @param sentence it, with that side's figures
 */
public record ListedFinding(Finding finding, On on, String sentence) {
    /** Sides of the vehicle. */
    public enum On {
        BOTH("Both sides"),
        LEFT("Left"),
        RIGHT("Right");

        private final String words;

        On(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The gravest first, and of one kind both sides before either. */
    public static final Comparator<ListedFinding> GRAVEST_FIRST =
            Comparator.comparing(ListedFinding::finding).thenComparing(ListedFinding::on);

    /**
     * The sentence behind the words of its severity: "Does not fit: no length works, …". Without
     * them where a shaft fits, since others of its findings may say that it does not.
     */
    public String ledSentence() {
        return finding.severity() == Severity.FITS_BUT
                ? sentence
                : finding.severity().led(sentence);
    }

    /** As a line of its own: "Left: The outer boot …". */
    public String line() {
        return on.words() + ": " + sentence;
    }
}

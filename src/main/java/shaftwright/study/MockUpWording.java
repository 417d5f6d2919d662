package shaftwright.study;

import java.util.Optional;
import shaftwright.mockup.MockUpCheck;
import shaftwright.mockup.StickComparison;
import shaftwright.mockup.WindowEnd;
import shaftwright.shaft.CorrectionLine;
import shaftwright.units.LengthUnit;

/** What is said of a mock-up: of a reading, of all of a side's, and of the correction. */
public final class MockUpWording {
    public static final String BOTTOMS = "bottoms ";
    public static final String PULLS_OUT = "pulls out ";

    /** Said of a difference that says nothing. */
    public static final String WITHIN = "as expected, within the doubt";

    /** Follow the length by which it does. */
    public static final String SOONER = " sooner";

    public static final String LATER = " later";

    /** Between what is said of both ends of the window. */
    public static final String BETWEEN = "; ";

    /** Said of a float from the bottom of a joint to the pull-out of the same. */
    public static final String ONE_STROKE = "one joint's stroke: says nothing of the window";

    /** Said of a height that the hub's path does not reach. */
    public static final String OUTSIDE = "outside the known path: not compared";

    /** Said where nothing pushes the races in. */
    public static final String NOT_PUSHED =
            "fully in is not judged: say what stops the races inboard";

    public static final String NOT_COMPARED = "Not compared: ";
    public static final String NOTHING_READ = "No reading to compare yet.";

    /** Between how many of all readings agree, and what follows. */
    public static final String OF = " of ";

    public static final String AGREE = " readings agree with the plan within the doubt.";
    public static final String CHECK = " Check ";

    /** Begin what is said of a correction. */
    public static final String IN = "Fully in: ";

    public static final String OUT = "fully out: ";
    public static final String UNREAD = "not read";
    public static final String AT = " at ";
    public static final String TO = ", ";

    /** Follows what the doubt grows by. */
    public static final String MORE_DOUBT = " added to the doubt.";

    private MockUpWording() {}

    /** What one reading says. */
    public static String said(StickComparison reading, LengthUnit unit) {
        String does = reading.end() == WindowEnd.IN ? BOTTOMS : PULLS_OUT;
        return reading.contradicts(false)
                ? does
                        + Wording.excess(Math.abs(reading.difference()), unit)
                        + (reading.sooner(false) ? SOONER : LATER)
                : does + WITHIN;
    }

    /** How many readings of a side agree, and what to look at when not all do. */
    public static String summary(MockUpCheck check) {
        int all = check.comparisons().size();
        if (all == 0) {
            return NOTHING_READ;
        }
        int against = check.contradicting(false);
        return (all - against)
                + OF
                + all
                + AGREE
                + (against == 0 ? "" : CHECK + check.suspicion(false).words() + ".");
    }

    /** What the readings of a side would correct; empty while there are none. */
    public static String correction(MockUpCheck check, LengthUnit unit) {
        if (check.comparisons().isEmpty()) {
            return "";
        }
        return IN
                + line(check.correction().inward(), unit)
                + BETWEEN
                + OUT
                + line(check.correction().outward(), unit)
                + BETWEEN
                + Wording.length(check.correction().doubt(), unit)
                + MORE_DOUBT;
    }

    private static String line(Optional<CorrectionLine> read, LengthUnit unit) {
        if (read.isEmpty()) {
            return UNREAD;
        }
        CorrectionLine line = read.get();
        String low = at(line, line.from(), unit);
        // As cells compare them, to the millionth of a millimetre.
        return Math.rint((line.to() - line.from()) * 1e6) == 0
                ? low
                : low + TO + at(line, line.to(), unit);
    }

    private static String at(CorrectionLine line, double travel, LengthUnit unit) {
        return Wording.length(line.at(travel), unit) + AT + Wording.travel(travel, unit);
    }
}

package shaftwright.study;

import java.util.Optional;
import shaftwright.mockup.MockUpCheck;
import shaftwright.mockup.StickComparison;
import shaftwright.mockup.StickReading;
import shaftwright.mockup.UnusableReading;
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

    /** What a reading that contradicts does, in a finding. */
    public static final Sentence<SideSlot> CONTRADICTS =
            Sentence.of(
                    SideSlot.class,
                    "the stick {STICK_DOES} {STICK_BY} {STICK_WHEN} at {STICK_AT} than the"
                            + " {STICK_THAN} figures say");

    /** Begins what is said of a reading that can't be used. */
    public static final String NOT_USED = "not used: ";

    /** Said of a reading that can't be used in a finding: its row's number, and what is wrong. */
    public static final String AT_READING = "at reading %s, %s";

    /** Said of holes fully in, and fully out, of a reading whose two are swapped. */
    public static final String SWAPPED = "%s fully in is not more than %s fully out";

    /** Said of how far apart holes are, of a stick that is too long for the cups. */
    public static final String TOO_LONG =
            "holes %s apart do not go between the cups, which take at most %s";

    /** Said when no reading can be used, and when some can. */
    public static final String NONE_USED = "No reading can be used: see what each row says.";

    public static final String SOME_UNUSED = " A reading can't be used: see what its row says.";

    /** Said where nothing pushes the races in. */
    public static final String NOT_PUSHED =
            "fully in is not judged: say what stops the races inboard";

    /** Said of what keeps it from that. */
    public static final String NOT_COMPARED = "Not compared: %s.";

    public static final String NOTHING_READ = "No reading to compare yet.";

    /** Said of how many of all readings agree. */
    public static final String AGREE = "%s of %s readings agree with the plan within the doubt.";

    public static final String CHECK = " Check %s.";

    /** Said of the correction of both ends of the window. */
    public static final String IN = "Fully in: %s; ";

    public static final String OUT = "fully out: %s; ";
    public static final String UNREAD = "not read";

    /** Said of a correction and the travel that it is for. */
    public static final String AT = "%s at %s";

    public static final String TO = ", ";

    /** Said of what the doubt grows by. */
    public static final String MORE_DOUBT = "%s added to the doubt.";

    private MockUpWording() {}

    /**
     * What the reading of a height says of both ends of the window, empty while that is nothing.
     */
    public static String row(MockUpCheck check, StickReading reading, LengthUnit unit) {
        if (!check.knows(reading)) {
            return OUTSIDE;
        }
        Optional<UnusableReading> unusable = check.unusable(reading.row());
        if (unusable.isPresent()) {
            return NOT_USED + unusable(unusable.get(), unit);
        }
        String in = at(check, reading, WindowEnd.IN, unit);
        String out = at(check, reading, WindowEnd.OUT, unit);
        if (in.isEmpty() && reading.holesIn().isPresent()) {
            in = NOT_PUSHED;
        }
        if (in.isEmpty() && out.isEmpty() && reading.oneStroke()) {
            return ONE_STROKE;
        }
        return in + (in.isEmpty() || out.isEmpty() ? "" : BETWEEN) + out;
    }

    private static String at(
            MockUpCheck check, StickReading reading, WindowEnd end, LengthUnit unit) {
        return check.at(reading.row(), end).map(each -> said(each, unit)).orElse("");
    }

    /** What one reading says. */
    public static String said(StickComparison reading, LengthUnit unit) {
        String does = reading.end() == WindowEnd.IN ? BOTTOMS : PULLS_OUT;
        return reading.contradicts(false)
                ? does
                        + Wording.excess(Math.abs(reading.difference()), unit)
                        + (reading.sooner(false) ? SOONER : LATER)
                : does + WITHIN;
    }

    /** What is wrong with a reading that can't be used, by its numbers. */
    public static String unusable(UnusableReading reading, LengthUnit unit) {
        return switch (reading.flaw()) {
            case SWAPPED ->
                    SWAPPED.formatted(
                            Wording.length(reading.reading().holesIn().orElseThrow(), unit),
                            Wording.length(reading.reading().holesOut().orElseThrow(), unit));
            case TOO_LONG ->
                    TOO_LONG.formatted(
                            Wording.length(reading.longest(), unit),
                            Wording.length(reading.most(), unit));
        };
    }

    /** The same with its row. */
    public static String unusableAt(UnusableReading reading, LengthUnit unit) {
        return AT_READING.formatted(reading.reading().row() + 1, unusable(reading, unit));
    }

    /** How many readings of a side agree, and what to look at when not all do. */
    public static String summary(MockUpCheck check) {
        int all = check.comparisons().size();
        boolean unused = !check.unusable().isEmpty();
        if (all == 0) {
            return unused ? NONE_USED : NOTHING_READ;
        }
        int against = check.contradicting(false);
        return AGREE.formatted(all - against, all)
                + (against == 0 ? "" : CHECK.formatted(check.suspicion(false).words()))
                + (unused ? SOME_UNUSED : "");
    }

    /** What the readings of a side would correct; empty while there are none. */
    public static String correction(MockUpCheck check, LengthUnit unit) {
        if (check.comparisons().isEmpty()) {
            return "";
        }
        return IN.formatted(line(check.correction().inward(), unit))
                + OUT.formatted(line(check.correction().outward(), unit))
                + MORE_DOUBT.formatted(Wording.length(check.correction().doubt(), unit));
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
        return AT.formatted(Wording.length(line.at(travel), unit), Wording.travel(travel, unit));
    }
}

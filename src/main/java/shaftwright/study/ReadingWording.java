package shaftwright.study;

import java.util.List;
import java.util.stream.Collectors;
import shaftwright.suspension.CrossCheck;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.NextReading;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.suspension.SuspectReading;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.units.LengthUnit;

/** What is said of readings that contradict each other. */
public final class ReadingWording {
    /** Said of a row before what its other rows expect of a quantity; of a repeat likewise. */
    public static final String NOTE_EXPECTS = "; the others expect about ";

    /** Said of the same inside a list, before and after the figure. */
    public static final String LISTED_ABOUT = " (about ";

    public static final String LISTED_EXPECTED = " expected)";

    /** Between the parts of a list. */
    public static final String LISTED_BETWEEN = ", and ";

    /** Begins what is said of a side with suspect readings. */
    public static final String AGAIN = "Readings contradict each other. Measure again: ";

    /** Begins what is said of a side whose readings contradict without one that can be named. */
    public static final String MORE =
            "Readings contradict each other. Measure one more height, best near ";

    /** Parts of what is said of a side's readings as a whole. */
    public static final String NOT_USED = "Not used: ";

    public static final String HEIGHTS = " heights, ";
    public static final String TWO_HEIGHTS = "too few for a verdict";
    public static final String NO_CROSS_CHECK = "too few to check each other";
    public static final String CURVE = "a curve of degree ";
    public static final String ENDS_NOT_CHECKED = ", a wrong reading at either end would not show";
    public static final String DOUBT = "; tape and curve leave a doubt of ";
    public static final String MEASURE_AGAIN = " Measure again: ";
    public static final String READINGS_OF = " Readings of ";
    public static final String CONTRADICT_EACH_OTHER =
            " contradict each other, and so few can't show which is wrong: measure one more"
                    + " height, best near ";
    public static final String NO_CAMBER = " No camber was read: 0 is used.";
    public static final String NO_TOE = " No toe was read: 0 is used.";

    /** Said in place of where to read next. */
    private static final String CONTRADICTION_FIRST =
            "The readings contradict each other: settle that first.";

    private ReadingWording() {}

    /** What to measure again in a row: "measure this again, distance or height". */
    public static String again(MeasuredQuantity quantity) {
        return quantity == MeasuredQuantity.DISTANCE
                ? "measure this again, " + name(quantity)
                : "measure " + name(quantity) + " again";
    }

    /**
     * What to measure again when one of a row's readings is mistyped.
     *
     * @param repeat from 1
     */
    public static String again(int repeat) {
        return "measure the " + repeat(repeat) + " again, it looks mistyped";
    }

    /** A quantity as it is called beside its row. */
    public static String name(MeasuredQuantity quantity) {
        return switch (quantity) {
            case DISTANCE -> "distance or height";
            case FORE_AFT -> "fore-aft";
            case CAMBER -> "camber";
            case TOE -> "toe";
        };
    }

    /**
     * One of several readings of a distance.
     *
     * @param repeat from 1
     */
    public static String repeat(int repeat) {
        return List.of("first", "second", "third").get(repeat - 1) + " distance";
    }

    /** The note beside a suspect reading. */
    public static String note(SuspectReading suspect, LengthUnit unit) {
        String again = suspect.isRepeat() ? again(suspect.repeat()) : again(suspect.quantity());
        return again + NOTE_EXPECTS + expected(suspect, unit);
    }

    /** A suspect reading inside a list: "row 5, distance or height (about 26 1/8 in expected)". */
    public static String listed(SuspectReading suspect, LengthUnit unit) {
        String what = suspect.isRepeat() ? repeat(suspect.repeat()) : name(suspect.quantity());
        return "row "
                + suspect.row()
                + ", "
                + what
                + LISTED_ABOUT
                + expected(suspect, unit)
                + LISTED_EXPECTED;
    }

    /** What the other rows expect: a distance to a sixteenth or a millimetre. */
    public static String expected(SuspectReading suspect, LengthUnit unit) {
        double value = suspect.expected();
        return switch (suspect.quantity()) {
            case DISTANCE -> distance(value, unit);
            case FORE_AFT -> Wording.length(value, unit);
            case CAMBER, TOE -> Wording.angle(value);
        };
    }

    /** A distance or height as it would be read off a tape: "26 1/8 in", "664 mm". */
    public static String distance(double millimetres, LengthUnit unit) {
        return unit == LengthUnit.INCH
                ? Length.of(millimetres, LengthUnit.MILLIMETRE).format(LengthStyle.SIXTEENTHS)
                : Wording.rounded(millimetres, 0) + " mm";
    }

    /** All suspect readings of a side; empty without any. */
    public static String listed(ReadingContradiction contradiction, LengthUnit unit) {
        return contradiction.suspects().stream()
                .map(suspect -> listed(suspect, unit))
                .collect(Collectors.joining(LISTED_BETWEEN));
    }

    /** What is said wherever something rests on readings; empty when they go together. */
    public static String sentence(ReadingContradiction contradiction, LengthUnit unit) {
        if (!contradiction.exists()) {
            return "";
        }
        return contradiction.suspects().isEmpty()
                ? MORE + nextHeight(contradiction, unit) + "."
                : AGAIN + listed(contradiction, unit) + ".";
    }

    /** How far a side's readings can be trusted, and what to measure again. */
    public static String summary(MeasuredPath path, LengthUnit unit) {
        ReadingContradiction found = path.contradiction();
        return path.rows().size()
                + HEIGHTS
                + curve(path)
                + (DOUBT + Wording.length(path.worstDoubt(), unit) + ".")
                + (found.suspects().isEmpty() ? "" : MEASURE_AGAIN + listed(found, unit) + ".")
                + (found.isUnplaced()
                        ? READINGS_OF
                                + unplaced(found)
                                + CONTRADICT_EACH_OTHER
                                + nextHeight(found, unit)
                                + "."
                        : "")
                + (path.fit(MeasuredQuantity.CAMBER).isPresent() ? "" : NO_CAMBER)
                + (path.fit(MeasuredQuantity.TOE).isPresent() ? "" : NO_TOE);
    }

    private static String curve(MeasuredPath path) {
        if (!path.mayGiveVerdict()) {
            return TWO_HEIGHTS;
        }
        return switch (path.crossCheck()) {
            case NONE -> NO_CROSS_CHECK;
            case NAMES_THE_ROW -> CURVE + path.degree();
            default -> CURVE + path.degree() + ENDS_NOT_CHECKED;
        };
    }

    /** Where one more row tells most. */
    public static String nextHeight(ReadingContradiction contradiction, LengthUnit unit) {
        return distance(contradiction.nextHeight(), unit);
    }

    /** What contradicts without a row that can be named: "distance", "camber and toe". */
    public static String unplaced(ReadingContradiction contradiction) {
        return contradiction.unplaced().stream()
                .map(ReadingWording::single)
                .collect(Collectors.joining(" and "));
    }

    /** A quantity by itself. */
    public static String single(MeasuredQuantity quantity) {
        return quantity == MeasuredQuantity.DISTANCE ? "distance" : name(quantity);
    }

    /** Whether to go on measuring a path, and where. */
    public static String next(MeasuredPath path, LengthUnit unit) {
        return path.nextReading()
                .map(next -> next(next, path.crossCheck(), path.settings().tapeGraduation(), unit))
                .orElse(CONTRADICTION_FIRST);
    }

    /**
     * Whether to go on measuring, and where; while the rows can't check each other, always.
     *
     * @param graduation of the tape, mm
     */
    public static String next(
            NextReading next, CrossCheck check, double graduation, LengthUnit unit) {
        String now = "The largest doubt of the distance is " + Wording.length(next.doubt(), unit);
        String there =
                "one more reading with the outer datum near " + distance(next.height(), unit);
        if (next.tells(graduation)) {
            return now
                    + "; "
                    + there
                    + " would bring it to "
                    + Wording.length(next.doubtThen(), unit)
                    + ".";
        }
        return check == CrossCheck.NAMES_THE_ROW
                ? now + "; one more reading would lower it by less than half a graduation."
                : now
                        + ", if no reading is wrong; so few can't tell which one is: "
                        + there
                        + " helps most.";
    }
}

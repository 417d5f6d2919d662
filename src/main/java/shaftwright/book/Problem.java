package shaftwright.book;

import java.util.Optional;

/**
 * Something wrong or doubtful in a workbook, in a builder's words.
 *
 * @param severity whether it keeps the workbook from being filled
 * @param place the cell, when it is one cell's matter
 * @param subject what the cell is, such as "inner joint, scenario B"
 * @param found what is there
 * @param expected what should be there, or what to do
 */
public record Problem(
        Severity severity,
        Optional<CellPlace> place,
        String subject,
        String found,
        String expected) {
    /** How grave it is. */
    public enum Severity {
        /** The workbook can't be filled. */
        ERROR,
        /** Worth a look; results are given all the same. */
        WARNING
    }

    /** Of the whole workbook, or of what has no cell. */
    public static Problem error(String subject, String found, String expected) {
        return error(Optional.empty(), subject, found, expected);
    }

    public static Problem error(CellPlace place, String subject, String found, String expected) {
        return error(Optional.of(place), subject, found, expected);
    }

    public static Problem error(
            Optional<CellPlace> place, String subject, String found, String expected) {
        return new Problem(Severity.ERROR, place, subject, found, expected);
    }

    /** Of the whole workbook, or of what has no cell. */
    public static Problem warning(String subject, String found, String expected) {
        return warning(Optional.empty(), subject, found, expected);
    }

    public static Problem warning(CellPlace place, String subject, String found, String expected) {
        return warning(Optional.of(place), subject, found, expected);
    }

    public static Problem warning(
            Optional<CellPlace> place, String subject, String found, String expected) {
        return new Problem(Severity.WARNING, place, subject, found, expected);
    }

    /** Whether it keeps the workbook from being filled. */
    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /**
     * One line: {@code sheet "Measure", cell D9 (distance, left, row 3): found …; expected …}, with
     * one full stop or question mark at its end, even where what is expected ends in a sentence.
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        if (place.isPresent()) {
            text.append(place.get()).append(" (").append(subject).append(")");
        } else {
            text.append(subject);
        }
        text.append(": found ").append(found);
        if (!expected.isEmpty()) {
            text.append("; expected ").append(expected);
        }
        boolean ended =
                text.charAt(text.length() - 1) == '?' || text.charAt(text.length() - 1) == '.';
        return ended ? text.toString() : text.append('.').toString();
    }
}

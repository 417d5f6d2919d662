package shaftwright.calc;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a command asks before it begins, or before it writes. Nothing comes back on Cancel. */
interface Questions {
    /** The workbook to take a variant from. */
    Optional<Path> workbook();

    /**
     * The workbooks to compare.
     *
     * @param first those in the list to begin with
     */
    Optional<List<Path>> workbooks(List<Path> first);

    /**
     * Which variant goes where.
     *
     * @param variants those that there are
     * @param columns what stands in each column
     * @param free the column to begin with
     */
    Optional<Choice> taking(List<Offer> variants, List<String> columns, int free);

    /** The sheets that are to be seen, of those that there are. */
    Optional<Set<String>> sheets(Map<String, Boolean> seen);

    /** Whether to go on, once a page was read. */
    boolean agrees(String question, List<String> page);

    /**
     * A variant to be taken.
     *
     * @param scenario zero-based
     * @param title letter and name
     */
    record Offer(int scenario, String title) {}

    /**
     * A variant and the column that it goes to, both zero-based.
     *
     * @param scenario in the other workbook
     * @param column in this one
     */
    record Choice(int scenario, int column) {}
}

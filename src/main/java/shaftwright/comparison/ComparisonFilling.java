package shaftwright.comparison;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.OpenBook;
import shaftwright.book.Problem;
import shaftwright.contract.Contract;
import shaftwright.filling.Filling;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.units.LengthUnit;

/**
 * Fills a comparison: each sizing workbook in it as a workbook of its own, then the pages that lay
 * them side by side. Nothing is written while something is wrong with one of them.
 */
public final class ComparisonFilling {
    /**
     * What came of one sizing workbook.
     *
     * @param book it, as an open book of its own
     * @param filling what came of it
     */
    public record Part(PartBook book, Filling.Report filling) {
        /** Its number in the comparison, from 1. */
        public int number() {
            return book.number();
        }
    }

    /**
     * What came of all.
     *
     * @param parts the sizing workbooks in order
     * @param problems with the comparison's own pages
     * @param written cells that were given a value
     * @param strayed cells that hold a value, or when asked another formula, in place of theirs
     */
    public record Report(List<Part> parts, List<Problem> problems, int written, int strayed) {
        public Report {
            parts = List.copyOf(parts);
            problems = List.copyOf(problems);
        }

        /** Whether something keeps the comparison from being filled. */
        public boolean hasErrors() {
            for (Problem problem : allProblems()) {
                if (problem.isError()) {
                    return true;
                }
            }
            return false;
        }

        /** Those of every sizing workbook, then those of the comparison's own pages. */
        public List<Problem> allProblems() {
            List<Problem> all = new ArrayList<>();
            for (Part part : parts) {
                for (Problem problem : part.filling().problems()) {
                    all.add(placed(part.book(), problem));
                }
            }
            all.addAll(problems);
            return all;
        }

        /** A problem without a cell does not tell by itself which book it is about. */
        private static Problem placed(PartBook book, Problem problem) {
            return problem.place().isPresent()
                    ? problem
                    : new Problem(
                            problem.severity(),
                            problem.place(),
                            "book " + book.number() + ", " + problem.subject(),
                            problem.found(),
                            problem.expected());
        }
    }

    private final OpenBook book;
    private final Map<String, Area> names;
    private final List<Part> parts = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private int written;
    private int strayed;

    private ComparisonFilling(OpenBook book) {
        this.book = book;
        names = book.names();
    }

    /** Fills a comparison. */
    public static Report fill(OpenBook book) {
        return new ComparisonFilling(book).run(Filling::fill, true, false);
    }

    /** Computes its sizing workbooks and writes nothing. */
    public static Report compute(OpenBook book) {
        return new ComparisonFilling(book).run(Filling::compute, false, false);
    }

    /** Computes, looks for edited formulas as well, and writes nothing. */
    public static Report check(OpenBook book) {
        return new ComparisonFilling(book).run(Filling::check, false, true);
    }

    private interface Step {
        Filling.Report of(OpenBook book);
    }

    private Report run(Step step, boolean write, boolean edited) {
        Cells cells = book.read(ownAreas());
        version(cells);
        if (!stopped()) {
            for (PartBook part : Comparison.parts(book)) {
                Filling.Report report = step.of(part);
                parts.add(new Part(part, report));
                written += report.written();
                strayed += report.strayed();
            }
            if (parts.isEmpty()) {
                error("the comparison", "no sizing workbook in it", "one; compare them anew");
            }
        }
        if (!stopped()) {
            pages(cells, write, edited);
        }
        return new Report(parts, problems, written, strayed);
    }

    private boolean stopped() {
        return new Report(parts, problems, 0, 0).hasErrors();
    }

    private Collection<Area> ownAreas() {
        Collection<Area> areas = new ArrayList<>();
        for (Map.Entry<String, Area> name : names.entrySet()) {
            if (name.getKey().startsWith(Comparison.PREFIX)
                    || name.getKey().startsWith("comparison_")
                    || name.getKey().equals(Comparison.VERSION_NAME)) {
                areas.add(name.getValue());
            }
        }
        return areas;
    }

    private void version(Cells cells) {
        CellValue version = value(cells, Comparison.VERSION_NAME, 0);
        if (!(version instanceof CellValue.Numeric number)
                || number.value() != Comparison.VERSION) {
            error(
                    "the comparison's version",
                    "another",
                    "version "
                            + Comparison.VERSION
                            + "; compare the workbooks anew with this program");
        }
    }

    private CellValue value(Cells cells, String name, int offset) {
        Area area = names.get(name);
        return area == null || offset >= area.size()
                ? CellValue.BLANK
                : cells.at(area.place(offset)).value();
    }

    private void pages(Cells cells, boolean write, boolean edited) {
        Map<Integer, Sizing> books = new HashMap<>();
        for (Part part : parts) {
            books.put(part.number(), part.filling().sizing().orElseThrow());
        }
        List<Column> columns = columns(cells, books);
        if (stopped()) {
            return;
        }
        Map<String, List<CellValue>> wanted =
                ComparedValues.of(
                        ComparedLines.upTo(version()),
                        columns,
                        books,
                        unit(cells),
                        tolerance(cells));
        ComparisonCells own = ComparisonCells.find(names, cells, wanted, problems);
        if (stopped()) {
            return;
        }
        strayed += own.overwritten(problems);
        if (edited && version() == Contract.VERSION) {
            strayed += own.edited(problems);
        }
        if (write) {
            Map<CellPlace, CellValue> values = own.values();
            book.write(values);
            written += values.size();
        }
    }

    /** Contract version by which it was made, which is that of all its sizing workbooks. */
    private int version() {
        return parts.get(0).filling().age().version();
    }

    /** Unit of the pages; it was written when the comparison was made. */
    private LengthUnit unit(Cells cells) {
        return value(cells, Comparison.UNIT, 0) instanceof CellValue.Text text
                        && text.value().equalsIgnoreCase("mm")
                ? LengthUnit.MILLIMETRE
                : LengthUnit.INCH;
    }

    private double tolerance(Cells cells) {
        return value(cells, Comparison.TOLERANCE, 0) instanceof CellValue.Numeric number
                ? number.value()
                : 0;
    }

    /** Columns without a book number are the builder's own. */
    private List<Column> columns(Cells cells, Map<Integer, Sizing> books) {
        List<Column> columns = new ArrayList<>();
        Area numbers = names.get(Comparison.BOOKS);
        Area letters = names.get(Comparison.LETTERS);
        for (int offset = 0; numbers != null && offset < numbers.size(); offset++) {
            CellPlace place = numbers.place(offset);
            CellValue book = cells.at(place).value();
            if (book instanceof CellValue.Blank || letters == null) {
                continue;
            }
            CellPlace below = new CellPlace(letters.sheet(), letters.firstRow(), place.column());
            CellValue letter = cells.at(below).value();
            Optional<Column> column = column(books, book, letter);
            if (column.isEmpty()) {
                problems.add(
                        new Problem(
                                Problem.Severity.ERROR,
                                Optional.of(place),
                                "book number and scenario letter of a column",
                                "no scenario of a sizing workbook in this file",
                                "the number and letter that stood there; bring them back, or"
                                        + " compare the workbooks anew"));
            } else {
                columns.add(column.get());
            }
        }
        if (columns.isEmpty() && !stopped()) {
            error(
                    "the defined names " + Comparison.BOOKS + " and " + Comparison.LETTERS,
                    "no columns",
                    "the rows over the columns; compare the workbooks anew");
        }
        return columns;
    }

    private static Optional<Column> column(
            Map<Integer, Sizing> books, CellValue book, CellValue letter) {
        if (book instanceof CellValue.Numeric number
                && letter instanceof CellValue.Text text
                && books.containsKey((int) number.value())) {
            int there = books.get((int) number.value()).scenarios().size();
            return ScenarioOutcome.number(text.value()).stream()
                    .filter(scenario -> scenario < there)
                    .mapToObj(scenario -> new Column((int) number.value(), scenario))
                    .findAny();
        }
        return Optional.empty();
    }

    private void error(String subject, String found, String expected) {
        problems.add(
                new Problem(Problem.Severity.ERROR, Optional.empty(), subject, found, expected));
    }
}

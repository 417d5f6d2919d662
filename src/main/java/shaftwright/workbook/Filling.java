package shaftwright.workbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shaftwright.workbook.live.LiveCells;
import shaftwright.workbook.live.Quantity;

/**
 * Reads an open book, computes everything and writes it back: open book, inputs, hub path, scenario
 * results, writes, open book. Nothing is written while something is wrong with the inputs.
 */
public final class Filling {
    /**
     * What came of it.
     *
     * @param problems all that was noticed
     * @param sizing the results, when there are any to show
     * @param written cells that were given a value
     */
    public record Report(List<Problem> problems, Optional<Sizing> sizing, int written) {
        public Report {
            problems = List.copyOf(problems);
        }

        /** Whether something keeps the workbook from being filled. */
        public boolean hasErrors() {
            return problems.stream().anyMatch(Problem::isError);
        }
    }

    private final OpenBook book;
    private final List<Problem> problems = new ArrayList<>();

    private Filling(OpenBook book) {
        this.book = book;
    }

    /** Fills the book. */
    public static Report fill(OpenBook book) {
        return new Filling(book).run(true);
    }

    /** Computes the book's results and writes nothing. */
    public static Report compute(OpenBook book) {
        return new Filling(book).run(false);
    }

    private Report run(boolean write) {
        Map<String, Area> names = book.names();
        new ContractCheck(problems).names(names);
        if (stopped()) {
            return report(null, 0);
        }
        Collection<Area> areas = new ArrayList<>(InputReader.areas(names));
        areas.add(names.get(Contract.VERSION_NAME));
        areas.addAll(LiveCells.areas(names));
        Map<CellPlace, CellContent> cells = book.read(areas);
        new ContractCheck(problems).version(names.get(Contract.VERSION_NAME), cells);
        if (stopped()) {
            return report(null, 0);
        }
        InputValues inputs = new InputReader(names, cells, problems).read();
        if (stopped() && inputs.scenarios() == 0) {
            return report(null, 0);
        }
        Sizing sizing = Sizing.of(inputs, problems);
        LiveCells live = LiveCells.find(names, cells, inputs.scenarios(), problems);
        overwritten(live);
        if (stopped()) {
            return report(null, 0);
        }
        Map<CellPlace, CellValue> values = live.values(sizing);
        if (write) {
            book.write(values);
        }
        return report(sizing, values.size());
    }

    private void overwritten(LiveCells live) {
        for (LiveCells.Cell cell : live.all()) {
            if (!cell.content().hasFormula() && cell.line().quantity() != Quantity.ORDINAL) {
                problems.add(
                        Problem.warning(
                                cell.place(),
                                cell.line().label(),
                                InputReader.shown(cell.content().value())
                                        + " in place of a formula",
                                "the formula; it is left as it is, and what depends on it may not"
                                        + " agree with the rest"));
            }
        }
    }

    private boolean stopped() {
        for (Problem problem : problems) {
            if (problem.isError()) {
                return true;
            }
        }
        return false;
    }

    private Report report(Sizing sizing, int written) {
        return new Report(problems, Optional.ofNullable(sizing), written);
    }
}

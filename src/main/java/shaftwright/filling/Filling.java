package shaftwright.filling;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import shaftwright.book.Area;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.OpenBook;
import shaftwright.book.PackUse;
import shaftwright.book.Problem;
import shaftwright.contract.Contract;
import shaftwright.live.LiveLines;
import shaftwright.reading.InputReader;
import shaftwright.reading.InputValues;
import shaftwright.reading.Sizing;

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
     * @param strayed live cells that hold a value, or, when that was asked, another formula than
     *     the declared one
     * @param age how old the workbook is; what it lacks for that is among the problems
     */
    public record Report(
            List<Problem> problems,
            Optional<Sizing> sizing,
            int written,
            int strayed,
            BookAge age) {
        public Report {
            problems = List.copyOf(problems);
        }

        /** Whether something keeps the workbook from being filled. */
        public boolean hasErrors() {
            return problems.stream().anyMatch(Problem::isError);
        }
    }

    /** What is to be done with an open book. */
    private enum Purpose {
        FILL,
        COMPUTE,
        CHECK
    }

    private final OpenBook book;
    private final Purpose purpose;
    private final Collection<TypedColumn> typed;
    private final List<Problem> problems = new ArrayList<>();
    private int strayed;
    private BookAge age = BookAge.CURRENT;

    private Filling(OpenBook book, Purpose purpose, Collection<TypedColumn> typed) {
        this.book = book;
        this.purpose = purpose;
        this.typed = typed;
    }

    /**
     * Begins to declare the live lines, which every book needs, beside whatever goes on: it takes
     * about as long as opening a file.
     */
    @SuppressWarnings("FutureReturnValueIgnored") // Whoever needs the lines waits for their class.
    public static void prepare() {
        CompletableFuture.runAsync(LiveLines::all);
    }

    /** Fills the book. */
    public static Report fill(OpenBook book) {
        return fill(book, List.of());
    }

    /**
     * Types into input cells and fills the book with what follows from them.
     *
     * @throws NoSuchCellException if the book has no cell for something that is to be typed
     */
    public static Report fill(OpenBook book, Collection<TypedColumn> typed) {
        return new Filling(book, Purpose.FILL, typed).run();
    }

    /** Computes the book's results and writes nothing. */
    public static Report compute(OpenBook book) {
        return new Filling(book, Purpose.COMPUTE, List.of()).run();
    }

    /**
     * Computes, looks for edited formulas and for figures that an earlier fill left behind as well,
     * and writes nothing.
     */
    public static Report check(OpenBook book) {
        return new Filling(book, Purpose.CHECK, List.of()).run();
    }

    private Report run() {
        Map<String, Area> names = book.names();
        new ContractCheck(problems).names(names);
        if (stopped()) {
            return report(null, 0);
        }
        Collection<Area> areas = new ArrayList<>(InputReader.areas(names));
        areas.add(names.get(Contract.VERSION_NAME));
        Cells cells = book.read(areas);
        int version = new ContractCheck(problems).version(names.get(Contract.VERSION_NAME), cells);
        if (stopped()) {
            return report(null, 0);
        }
        age = BookAge.of(version, names);
        age.problem().ifPresent(problems::add);
        TypedCells overlay = TypedCells.of(typed, names, cells, problems, version);
        TypedFormulas formulas = new TypedFormulas(book, cells, overlay);
        List<Problem> known = List.copyOf(problems);
        InputValues inputs = formulas.read(version, problems);
        Cells shown = book.read(LiveCells.areas(names));
        if (!inputs.complete() || (stopped() && inputs.scenarios() == 0)) {
            if (scenariosAsMade(names, cells, shown) && !inputs.complete()) {
                // What else would be said follows from the cells that are gone.
                LiveCells.find(names, shown, inputs.scenarios(), version, problems);
            }
            return report(null, 0);
        }
        LiveCheck look =
                LiveCheck.of(names, shown, inputs.scenarios(), version, purpose == Purpose.CHECK);
        Sizing sizing = sizing(inputs, formulas);
        if (!scenariosAsMade(names, cells, shown)) {
            return report(null, 0);
        }
        while (!stopped() && formulas.changeWith(look.live(), sizing)) {
            problems.clear();
            problems.addAll(known);
            sizing = sizing(formulas.read(version, problems), formulas);
        }
        formulas.refuse(problems);
        problems.addAll(look.found());
        List<Problem> outdated =
                purpose == Purpose.CHECK && !stopped() ? look.outdated(sizing) : List.of();
        problems.addAll(look.overwritten());
        problems.addAll(look.edited());
        problems.addAll(outdated);
        strayed = look.overwritten().size() + look.edited().size();
        if (stopped()) {
            return report(null, 0);
        }
        return report(
                sizing,
                purpose == Purpose.FILL ? write(look.live(), sizing, overlay, formulas) : 0);
    }

    private Sizing sizing(InputValues inputs, TypedFormulas formulas) {
        boolean resultsOnly = purpose == Purpose.COMPUTE && !formulas.readResults();
        return resultsOnly || stopped()
                ? Sizing.of(inputs, problems)
                : Sizing.withVariants(inputs, problems);
    }

    /**
     * Whether all scenario columns are there; if not, that is all that is said, as everything else
     * follows from it. Asked late, since it needs a large sheet.
     */
    private boolean scenariosAsMade(Map<String, Area> names, Cells cells, Cells live) {
        List<Problem> columns = new ArrayList<>();
        boolean asMade = ScenarioCheck.complete(names, cells, live, columns);
        if (!asMade) {
            problems.clear();
            problems.addAll(columns);
        }
        return asMade;
    }

    private int write(LiveCells live, Sizing sizing, TypedCells overlay, TypedFormulas formulas) {
        int results = live.write(sizing, book);
        book.write(overlay.values());
        book.write(formulas.values());
        notePackUse();
        return results + overlay.values().size();
    }

    /** Workbooks made before the note was have no cell for it. */
    private void notePackUse() {
        Area note = book.names().get(Contract.PACK_NOTE_NAME);
        if (note != null) {
            book.write(Map.of(note.place(0), CellValue.of(PackUse.in(book).note())));
        }
    }

    private boolean stopped() {
        return problems.stream().anyMatch(Problem::isError);
    }

    private Report report(Sizing sizing, int written) {
        return new Report(problems, Optional.ofNullable(sizing), written, strayed, age);
    }
}

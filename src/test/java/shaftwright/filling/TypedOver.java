package shaftwright.filling;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shaftwright.book.Area;
import shaftwright.book.Cells;
import shaftwright.book.Problem;
import shaftwright.contract.Contract;
import shaftwright.reading.InputReader;
import shaftwright.reading.InputValues;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.XlsxBook;

/**
 * A workbook read once, and what follows when something is typed over in it: as a fill has it, but
 * for all that has to do with cells other than typed ones.
 */
public final class TypedOver {
    private final Map<String, Area> names;
    private final Cells cells;

    private TypedOver(XlsxBook book) {
        names = book.names();
        cells = book.read(InputReader.areas(names));
    }

    public static TypedOver of(Path file) {
        return new TypedOver(XlsxBook.open(file));
    }

    /** Problems, and the results where there are any. */
    public Filling.Report with(List<TypedColumn> typed) {
        List<Problem> problems = new ArrayList<>();
        TypedCells overlay = TypedCells.of(typed, names, cells, problems, Contract.VERSION);
        InputValues inputs =
                new InputReader(names, overlay.over(), problems, Contract.VERSION).read();
        Optional<Sizing> sizing = Optional.of(Sizing.of(inputs, problems));
        Filling.Report report = new Filling.Report(problems, sizing, 0, 0, BookAge.CURRENT);
        return report.hasErrors()
                ? new Filling.Report(problems, Optional.empty(), 0, 0, BookAge.CURRENT)
                : report;
    }
}

package shaftwright.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.demo.DemoInputs;
import shaftwright.filling.Filling;
import shaftwright.filling.LiveCells;
import shaftwright.reading.Sizing;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** The demo workbook: typed cells and engine blocks; no live cell has a value yet. */
public final class DemoBook {
    private static final Map<String, byte[]> MADE = new ConcurrentHashMap<>();

    private DemoBook() {}

    /** Typed cells of the demo by defined name, one entry a cell. */
    public static Map<String, List<String>> typed() {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        DemoInputs.values()
                .forEach(
                        (name, value) -> {
                            List<String> cells = new ArrayList<>();
                            if (value instanceof List<?> list) {
                                list.forEach(each -> cells.add(String.valueOf(each)));
                            } else {
                                cells.add(String.valueOf(value));
                            }
                            typed.put(name, cells);
                        });
        return typed;
    }

    /** Scenario columns that the demo uses. */
    public static int scenarios() {
        return typed().get("scenario_name").size();
    }

    /** Writes the demo in inches with as many scenario columns as it uses. */
    public static Path write(Path file) {
        return write(file, typed(), scenarios());
    }

    /** Without those figures every stamp would rightly say that they are out of date. */
    public static void fillEngineBlocks(Path file) {
        XlsxBook book = XlsxBook.open(file);
        Optional<Sizing> sizing = Filling.compute(book).sizing();
        if (sizing.isPresent()) {
            Map<CellPlace, CellValue> figures = new HashMap<>();
            for (LiveCells.Cell cell :
                    Agreement.liveCells(book, sizing.get().inputs().scenarios())) {
                if (cell.line().isEngine()) {
                    CellValue value = cell.line().core().at(sizing.get(), cell.index());
                    figures.put(cell.place(), value);
                }
            }
            book.write(figures);
            book.save(file);
        }
    }

    /** Writes a changed demo. Laying one out takes seconds, so what was made once is kept. */
    public static Path write(Path file, Map<String, List<String>> typed, int scenarios) {
        try {
            String wanted = scenarios + " " + typed;
            byte[] made = MADE.get(wanted);
            if (made == null) {
                NewBook.write(file, LengthUnit.INCH, scenarios, typed);
                fillEngineBlocks(file);
                MADE.put(wanted, Files.readAllBytes(file));
            } else {
                Files.write(file, made);
            }
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

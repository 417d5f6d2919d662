package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.OpenBook;
import shaftwright.book.Problem;
import shaftwright.contract.Contract;
import shaftwright.filling.LiveCells;
import shaftwright.live.Section;
import shaftwright.reading.InputReader;
import shaftwright.reading.InputValues;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.XlsxBook;

/** The demo with one number far out of its input's range, as a forgotten unit makes one. */
public final class OutOfRangeWorkbooks {
    private static final int SCENARIOS = 3;

    private static final Set<Section> SHOWN =
            EnumSet.of(
                    Section.START,
                    Section.SCENARIO_RESULTS,
                    Section.MEASURE_NOTES,
                    Section.SHOP_CARD);

    private OutOfRangeWorkbooks() {}

    /**
     * Writes the demo with one cell typed over.
     *
     * @param name defined name of an input
     * @param offset of the cell among the name's, from 0
     */
    public static Path write(Path folder, String name, int offset, CellValue typed) {
        Path file = folder.resolve(name + ".xlsx");
        XlsxBook book = XlsxBook.open(DemoBook.write(file, DemoBook.typed(), SCENARIOS));
        book.write(Map.of(book.names().get(name).place(offset), typed));
        book.save(file);
        return file;
    }

    /** A forgotten mm in each kind of place, in a workbook in inches. */
    public static List<Path> forgottenMillimetres(Path folder) {
        CellValue asText = CellValue.of("620");
        CellValue asNumber = CellValue.of(620);
        return List.of(
                write(folder, "height_left", 2, asText),
                write(folder, "distance_first_left", 2, asNumber),
                write(folder, "joint_race_half_width", 0, asText),
                write(folder, "ring_thickness", 0, asText),
                write(folder, "hub_shift", 0, asNumber));
    }

    /** What the core makes of a workbook that the tool refuses to fill. */
    private static Sizing core(XlsxBook book) {
        List<Problem> problems = new ArrayList<>();
        InputValues inputs =
                new InputReader(
                                book.names(),
                                book.read(InputReader.areas(book.names())),
                                problems,
                                Contract.VERSION)
                        .read();
        assertThat(problems).as("problems of %s", book.title()).isNotEmpty();
        return Sizing.of(inputs, problems);
    }

    /** What the core says of the first scenario's inputs, or of those that all share. */
    public static String misread(Path file) {
        return core(XlsxBook.open(file)).misread().in(0);
    }

    /** What is wrong with the live cells of a copy that a program computed and saved. */
    public static List<String> complaintsOfSaved(Path file, OpenBook saved) {
        Cells cells = saved.read(LiveCells.areas(saved.names()));
        return complaints(file, place -> cells.at(place).value());
    }

    /**
     * Error values where a builder looks, and verdicts that are not the core's.
     *
     * @param computed what a program makes of the file's cells
     */
    public static List<String> complaints(Path file, SpoiltWorkbooks.Computed computed) {
        XlsxBook book = XlsxBook.open(file);
        Sizing core = core(book);
        assertThat(core.misread().in(0)).contains("out of range");
        List<String> complaints = new ArrayList<>();
        for (LiveCells.Cell cell : Agreement.liveCells(book, SCENARIOS)) {
            if (!SHOWN.contains(cell.line().section()) || !cell.content().hasFormula()) {
                continue;
            }
            CellValue value = computed.at(cell.place());
            String found = file.getFileName() + ": " + cell.line().name() + " " + value;
            if (value instanceof CellValue.Fault && !value.equals(CellValue.NOT_AVAILABLE)) {
                complaints.add(found);
            }
            if (cell.line().name().equals("verdict")) {
                CellValue verdict = cell.line().core().at(core, cell.index());
                if (!value.equals(verdict)) {
                    complaints.add(found + ", core " + verdict);
                }
            }
        }
        return complaints;
    }
}

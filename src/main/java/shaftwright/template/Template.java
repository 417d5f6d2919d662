package shaftwright.template;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Input;
import shaftwright.units.LengthUnit;

/**
 * Writes a new sizing workbook: every sheet, formula, style and chart, but no computed value yet.
 */
public final class Template {
    /** As they stand from left to right: what is typed, what comes of it, what is cut. */
    private static final List<String> ORDER =
            List.of(
                    StartSheet.NAME,
                    GuideSheet.NAME,
                    MeasureSheet.NAME,
                    LinkageSheet.NAME,
                    DampersSheet.NAME,
                    PartsSheet.NAME,
                    MatingSheet.NAME,
                    ScenariosSheet.NAME,
                    VariantsSheet.NAME,
                    TablesSheet.name(Side.LEFT),
                    ChartsSheet.name(Side.LEFT),
                    TablesSheet.name(Side.RIGHT),
                    ChartsSheet.name(Side.RIGHT),
                    DrawingSheet.name(Side.LEFT),
                    DrawingSheet.name(Side.RIGHT),
                    BlanksSheet.NAME,
                    PartsListSheet.NAME,
                    StrengthSheet.NAME,
                    DoubtSheet.NAME,
                    CardSheet.name(Side.LEFT),
                    CardSheet.name(Side.RIGHT),
                    MockUpSheet.NAME,
                    DerivationSheet.name(Side.LEFT),
                    DerivationSheet.name(Side.RIGHT),
                    BuiltSheet.NAME,
                    WorkingSheets.NAME,
                    WorkingSheets.name(Side.LEFT),
                    WorkingSheets.name(Side.RIGHT));

    private Template() {}

    /**
     * Writes a workbook that a fill then completes.
     *
     * @param file to be written
     * @param unit of bare numbers and results
     * @param scenarios scenario columns, 1 to {@link Contract#MOST_SCENARIOS}
     * @param typed contents of typed cells by defined name, one entry a cell
     * @throws IOException if the file can't be written
     */
    public static void write(
            Path file, LengthUnit unit, int scenarios, Map<String, List<String>> typed)
            throws IOException {
        if (scenarios < 1 || scenarios > Contract.MOST_SCENARIOS) {
            throw new IllegalArgumentException(
                    "scenarios must number 1 to "
                            + Contract.MOST_SCENARIOS
                            + "; have "
                            + scenarios);
        }
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            LaidSheets laid = LaidSheets.toBeWritten(workbook);
            layOut(laid, BookMark.NONE, unit, scenarios, values(typed));
            SteadyFile.write(laid, file);
        }
    }

    /** Lays a whole workbook out. */
    static Draft layOut(
            LaidSheets laid,
            BookMark mark,
            LengthUnit unit,
            int scenarios,
            Map<String, List<CellValue>> typed) {
        XSSFWorkbook workbook = laid.workbook();
        Draft draft = new Draft(new Look(workbook, unit), laid, mark, unit, scenarios, typed);
        StartSheet.lay(draft);
        sizing(draft);
        for (Side side : Side.values()) {
            ChartsSheet.lay(draft, side);
        }
        ORDER.forEach(name -> workbook.setSheetOrder(mark.sheet(name), ORDER.indexOf(name)));
        OptionalSheet.all()
                .map(name -> workbook.getSheetIndex(mark.sheet(name)))
                .forEach(sheet -> workbook.setSheetHidden(sheet, true));
        draft.finish();
        workbook.setForceFormulaRecalculation(true);
        workbook.setActiveSheet(0);
        ShapeNumbers.set(workbook);
        IgnoredErrors.set(laid);
        return draft;
    }

    /** Everything between the first sheet and the charts. */
    static void sizing(Draft draft) {
        GuideSheet.lay(draft);
        MeasureSheet.lay(draft);
        LinkageSheet.lay(draft);
        DampersSheet.lay(draft);
        PartsSheet.lay(draft);
        MatingSheet.lay(draft);
        ScenariosSheet.lay(draft);
        VariantsSheet.lay(draft);
        for (Side side : Side.values()) {
            TablesSheet.lay(draft, side);
        }
        BlanksSheet.lay(draft);
        PartsListSheet.lay(draft);
        StrengthSheet.lay(draft);
        DoubtSheet.lay(draft);
        MockUpSheet.lay(draft);
        BuiltSheet.lay(draft);
        WorkingSheets.lay(draft);
        for (Side side : Side.values()) {
            CardSheet.lay(draft, side);
            DrawingSheet.lay(draft, side);
            DerivationSheet.lay(draft, side);
        }
    }

    private static Map<String, List<CellValue>> values(Map<String, List<String>> typed) {
        Map<String, List<CellValue>> values = new HashMap<>();
        for (Map.Entry<String, List<String>> column : typed.entrySet()) {
            Input input = Contract.named(column.getKey());
            List<CellValue> cells = new ArrayList<>();
            for (String text : column.getValue()) {
                cells.add(input.typed(text));
            }
            values.put(column.getKey(), cells);
        }
        return values;
    }
}

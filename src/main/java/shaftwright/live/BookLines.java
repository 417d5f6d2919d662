package shaftwright.live;

import static shaftwright.contract.Grid.BOOK;

import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.study.Wording;

/** The workbook's unit, and single typed cells as numbers. */
enum BookLines implements LiveLine.Formula, LiveLine.Core {
    TAPE_MM("tape_mm", "Unit of bare numbers", Quantity.MILLIMETRE, "IF(unit=\"inch\",25.4,1)"),
    /** For the formulas of older workbooks; LibreOffice drops its space when it loads the file. */
    UNIT_WORD("unit_word", "Unit as written", Quantity.TEXT, "IF(unit=\"inch\",\" in\",\" mm\")"),
    UNIT_SYMBOL(
            "unit_symbol", "Unit in sentences", Quantity.TEXT, "IF(unit=\"inch\",\"in\",\"mm\")"),
    UNIT_DECIMALS(
            "unit_decimals", "Decimals in sentences", Quantity.WHOLE, "IF(unit=\"inch\",2,1)");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    BookLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (BookLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.BOOK_WORK,
                            BOOK,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
        ReadLines.declare(
                lines,
                Contract.inputs(BOOK),
                Section.BOOK_WORK,
                BOOK,
                (input, index) -> input.name());
    }

    @Override
    public int since() {
        return this == UNIT_SYMBOL ? 2 : 1;
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return switch (this) {
            case TAPE_MM -> CellValue.of(sizing.unit().mm());
            case UNIT_WORD -> CellValue.of(" " + sizing.unit().symbol());
            case UNIT_SYMBOL -> CellValue.of(sizing.unit().symbol());
            case UNIT_DECIMALS -> CellValue.of(Wording.decimals(sizing.unit()));
        };
    }
}

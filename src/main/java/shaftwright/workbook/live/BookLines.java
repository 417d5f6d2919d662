package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.BOOK;

import shaftwright.workbook.CellValue;
import shaftwright.workbook.Contract;
import shaftwright.workbook.Input;

/** The workbook's unit, and single typed cells as numbers. */
final class BookLines {
    private BookLines() {}

    static void declare(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "tape_mm",
                        Section.BOOK_WORK,
                        BOOK,
                        "Unit of bare numbers",
                        Quantity.MILLIMETRE,
                        index -> "IF(unit=\"inch\",25.4,1)",
                        (sizing, index) -> CellValue.of(sizing.unit().mm())));
        lines.add(
                new LiveLine(
                        "unit_word",
                        Section.BOOK_WORK,
                        BOOK,
                        "Unit as written",
                        Quantity.TEXT,
                        index -> "IF(unit=\"inch\",\" in\",\" mm\")",
                        (sizing, index) -> CellValue.of(" " + sizing.unit().symbol())));
        lines.add(
                new LiveLine(
                        "unit_decimals",
                        Section.BOOK_WORK,
                        BOOK,
                        "Decimals in sentences",
                        Quantity.WHOLE,
                        index -> "IF(unit=\"inch\",2,1)",
                        (sizing, index) -> CellValue.of(Phrases.decimals(sizing.unit()))));
        for (Input input : Contract.inputs(BOOK)) {
            if (input.kind().numeric()) {
                lines.add(ReadLines.of(input, Section.BOOK_WORK, BOOK, index -> input.name()));
            }
        }
    }
}

package shaftwright.workbook;

/** A value that a cell is to get; a fill has tens of thousands, which no map need find again. */
public record CellWrite(CellPlace place, CellValue value) {}

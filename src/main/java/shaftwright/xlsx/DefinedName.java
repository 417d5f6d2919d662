package shaftwright.xlsx;

/**
 * A defined name as the workbook part has it.
 *
 * @param name in lower case
 * @param sheet the sheet that it is defined for, empty when it is for the whole workbook
 * @param formula what it stands for; references without {@code $} are relative to a use in A1
 */
public record DefinedName(String name, String sheet, String formula) {}

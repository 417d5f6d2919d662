/**
 * What a workbook's cells are for: every input declared once, with its defined name, the grid that
 * its cells stand in, unit, range, default, meaning and the contract version that brought it.
 * {@link shaftwright.contract.Contract} lists them; template, reader, messages, notes, the README's
 * table and JSON keys all follow from it.
 */
package shaftwright.contract;

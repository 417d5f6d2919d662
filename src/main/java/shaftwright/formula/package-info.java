/**
 * Text of spreadsheet formulas, which knows no cell of a workbook: pieces that it is put together
 * from, formulas that read numbers, lengths and tyre sizes as they are typed, formulas that write
 * lengths out, and what two formulas have in common. What reads a text accepts and refuses the same
 * as the core's reader of it.
 */
package shaftwright.formula;

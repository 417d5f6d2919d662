/**
 * The sizing workbook without its file: the contract of typed cells ({@link
 * shaftwright.contract.Contract}), an open book ({@link shaftwright.book.OpenBook}) and the one
 * flow that reads, computes and writes it ({@link shaftwright.workbook.Filling}). Cells are found
 * by defined name. Lengths arrive as tape texts or numbers in the workbook's unit and leave as mm;
 * angles arrive in degrees and leave as rad.
 */
package shaftwright.workbook;

/**
 * Typed cells to a build: reads what a builder typed in an open book into the core's values,
 * remembers which cell each of them came from, and says by cell what is wrong with it. Lengths
 * arrive as tape texts or numbers in the workbook's unit and leave as mm; angles arrive in degrees
 * and leave as rad.
 */
package shaftwright.reading;

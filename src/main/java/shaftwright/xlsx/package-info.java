/**
 * An .xlsx file as an open book: cells are read by streaming the sheets that hold them, and a save
 * replaces the values of the written cells and copies every other byte of the file as it is. There
 * is no object model, so sheets, charts, notes, macros and parts that nobody here knows survive.
 * Office Open XML is ECMA-376 (transitional and strict); the container is PKWARE's APPNOTE.
 */
package shaftwright.xlsx;

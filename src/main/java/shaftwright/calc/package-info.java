/**
 * The extension for LibreOffice Calc: the cell functions, and a menu that fills and checks the open
 * document or opens a new one. UNO is used here only.
 *
 * <p>{@code XFunctions} and {@code CellFunctions} are written from the catalogue by {@link
 * AddInText}; a test holds them against it.
 */
package shaftwright.calc;

/**
 * Every live cell of a workbook: name, place, unit, the formula by which a spreadsheet computes it
 * and the core function that computes the same. {@link shaftwright.live.LiveLines} is the list.
 * Working figures are in mm and rad, shown ones in the workbook's unit and degrees.
 */
package shaftwright.live;

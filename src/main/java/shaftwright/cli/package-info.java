/**
 * Commands for a terminal: make a workbook, fill it, check it, show what it says. Answers go to
 * standard output, errors and progress to standard error; the jobs themselves are in {@code jobs}.
 * Starting fast matters more than anything else in this package: a fill is run after every change
 * of a cell.
 */
package shaftwright.cli;

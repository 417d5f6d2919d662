/**
 * The cell functions of the pack: name, parameters with unit and allowed range, meaning, source,
 * worked example and implementation, each declared once.
 *
 * <p>Answers what a function gives for the values of cells, as spreadsheets count: angles in
 * degrees, lengths in inches or mm as the last argument says, torque in N·m. Implementations call
 * the core, which holds formulas and sources.
 */
package shaftwright.functions;

/**
 * The invented vehicle behind the demo workbook: its rear suspension is made up first, the tape
 * readings of the demo are derived from it with plausible error, so that everything tells one
 * story. Lengths in mm, angles in radians, axes after ISO 8855 on the left side.
 */
package shaftwright.demo;

/**
 * Lengths as builders write them: tape fractions, decimal inches, feet and inches, millimetres.
 *
 * <p>Answers what a text from a tape or a parts list means, and how a length is shown. Inside, a
 * length is always millimetres; one inch is 25.4 mm exactly (international inch, 1959).
 */
package shaftwright.units;

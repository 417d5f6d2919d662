/**
 * Where the outer end of a half shaft goes as the wheel travels, relative to its inner end.
 *
 * <p>From tape readings taken at a few heights, or from a linkage's pick-up points, it makes a
 * {@link shaftwright.suspension.HubPath}, the one thing that everything about shaft length is
 * computed from. Lengths are in mm, angles in radians, axes after ISO 8855 on the left side: x
 * forward, y outward, z up. Curves are fitted by least squares with discrete orthogonal polynomials
 * (Forsythe, J. SIAM 5 (1957) 74-88), which ordinary cell formulas can repeat step by step.
 */
package shaftwright.suspension;

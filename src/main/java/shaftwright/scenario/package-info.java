/**
 * One variant of the build, judged: does the shaft fit, and if not, why and where. Inputs are
 * results of the sides; lengths in mm, angles in rad. The order in which reasons are looked for is
 * common practice, no source: what breaks first is told first.
 */
package shaftwright.scenario;

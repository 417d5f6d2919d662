/**
 * The torque that reaches a half shaft and what each part of the path can take: which part is the
 * weakest, and how safe.
 *
 * <p>Lengths in mm, torque in N·m, forces in N, stress in MPa, density in tonne/mm³, angles in
 * radians, speeds in rpm. Bars by elementary strength of materials, splines after Dudley, bolts by
 * ISO 898-1 and SAE J429, ball-joint life after Seherr-Thoss, Schmelz and Aucktor.
 */
package shaftwright.strength;

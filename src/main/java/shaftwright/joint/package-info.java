/**
 * Plunging joints: how far a race may travel in its cup at an angle, and what its shaft end meets.
 *
 * <p>Lengths in mm, angles in radians. Travel is counted along the cup's axis from the position
 * where the mid-planes of race and body are flush; inward is toward the cup back. Limits come from
 * bench readings or from the straight plunge; end and mouth clearances are plain geometry.
 */
package shaftwright.joint;

/**
 * How long a half shaft must be: position table, length window, choice of length, blank and cuts.
 *
 * <p>Lengths in mm, angles in radians; axes x forward, y outward, z up, each side computed as a
 * left one. From a hub path and two mounted joints it finds the shortest and longest shaft at each
 * travel by vectors, because each race moves along its own cup's axis, then a length inside both,
 * and a blank that it can be cut from. Everything here has a closed form that cells can repeat.
 */
package shaftwright.shaft;

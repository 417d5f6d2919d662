/**
 * How far the wheel may travel: bump from the ground clearance that must be left, and the range
 * that a shaft of given length allows before something touches or a damper or strap stops the
 * wheel, and the gap that a boot keeps. {@link shaftwright.travel.WheelMotion} is where a wheel
 * goes, and what carries the points near it. Lengths in mm, travel positive in bump. Formulas
 * follow from the hub path; sign conventions are those of {@link shaftwright.suspension}.
 */
package shaftwright.travel;

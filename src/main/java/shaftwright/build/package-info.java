/**
 * What a builder has and wants, as values: the vehicle, its tape readings, what stands near its
 * shafts, its joints and blanks, and the scenarios under discussion. Lengths are in mm, angles in
 * rad, forward, outward and up positive. All of it is immutable and validated where it is made;
 * {@link shaftwright.build.Build} holds it together, and a variant is a copy of a build with one
 * thing changed. Nothing is computed here.
 */
package shaftwright.build;

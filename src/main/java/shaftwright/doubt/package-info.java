/**
 * How far a figure may be off, and how likely a shaft bottoms or pulls out.
 *
 * <p>Lengths in mm. Contributions are combined as JCGM 100:2008 (GUM) says, and by trial as in JCGM
 * 101:2008; trials are seeded and repeat to the bit on any machine.
 */
package shaftwright.doubt;

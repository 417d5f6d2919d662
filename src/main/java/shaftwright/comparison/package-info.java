/**
 * Several sizing workbooks side by side in one file: finds each of them in it as an open book of
 * its own, and says what the pages that lay them side by side hold, once as formulas and once as
 * the core computes it. Lengths are mm inside and the comparison's unit in the file, in its sizing
 * workbooks as well.
 */
package shaftwright.comparison;

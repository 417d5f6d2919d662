/** Tests of the extension that need no office program. */
package shaftwright.calc;

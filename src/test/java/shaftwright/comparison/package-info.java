/** Tests of several workbooks side by side. */
package shaftwright.comparison;

/** Tests of the catalogue of cell functions. */
package shaftwright.functions;

/**
 * New workbooks: where every cell of the contract and every live formula stands, how it looks and
 * prints, and its charts. Written once with Apache POI, which is used in this package only; after
 * that a workbook is only ever patched.
 */
package shaftwright.template;

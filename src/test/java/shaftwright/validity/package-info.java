/**
 * Whether a workbook file is one that Excel opens without repairing it, as far as that can be known
 * without Excel: rules and limits that no schema holds (here), and the ECMA-376 schemas. The Open
 * XML SDK's validator is asked by tests that need other programs.
 */
package shaftwright.validity;

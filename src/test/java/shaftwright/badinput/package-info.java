/**
 * Bad input, damaged files and full disks, from a workbook through the commands to the message and
 * the exit code; whatever is refused leaves the file byte for byte as it was.
 */
package shaftwright.badinput;

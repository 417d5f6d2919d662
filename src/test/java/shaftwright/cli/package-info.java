/** Commands run inside the test's process, with their output and exit codes looked at. */
package shaftwright.cli;

/** What holds for the whole source tree. */
package shaftwright;

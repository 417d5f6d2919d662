/**
 * An open workbook as what fills it sees it: areas by defined name, cells by place, what they hold
 * and what is to be written into them, and what is wrong with them. It knows no trade and no file;
 * {@link shaftwright.book.OpenBook} is the port that a file and an open document fill in.
 */
package shaftwright.book;

package shaftwright.template;

import org.apache.poi.ss.usermodel.CellStyle;

/** Where the cells of one sheet are laid; rows and columns count from 0. */
interface LaidCells {
    /** Gives a cell its look, and makes it where there is none. */
    void style(int row, int column, CellStyle style);

    /** Puts a constant text into a cell. */
    void text(int row, int column, String text);

    /** The constant text that stands in a cell; empty where there is none. */
    String text(int row, int column);

    /** Puts a constant number into a cell. */
    void number(int row, int column, double number);

    /** Puts a formula into a cell, as it is written into the file. */
    void formula(int row, int column, CellFormula formula);

    /** Makes a row that is there so high. */
    void height(int row, float points);

    /** Goes through all cells, by rows and then by columns. */
    void forEach(Visitor visitor);

    /** Is shown cells. */
    interface Visitor {
        /**
         * One cell.
         *
         * @param style number of its style
         */
        void cell(int row, int column, long style, boolean formula);
    }
}

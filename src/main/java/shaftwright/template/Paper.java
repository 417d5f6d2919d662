package shaftwright.template;

import org.apache.poi.ss.usermodel.PaperSize;
import shaftwright.units.LengthUnit;

/** The paper that a workbook is printed on: that of the places where its unit is at home. */
enum Paper {
    /** ISO 216. */
    A4(210, 297, PaperSize.A4_PAPER),

    /** ANSI/ASME Y14.1, 8 1/2 by 11 in. */
    LETTER(215.9, 279.4, PaperSize.LETTER_PAPER);

    private final double shortSide;
    private final double longSide;
    private final PaperSize code;

    Paper(double shortSide, double longSide, PaperSize code) {
        this.shortSide = shortSide;
        this.longSide = longSide;
        this.code = code;
    }

    static Paper of(LengthUnit unit) {
        return unit == LengthUnit.INCH ? LETTER : A4;
    }

    /** From its left to its right edge, mm. */
    double width(boolean landscape) {
        return landscape ? longSide : shortSide;
    }

    /** From its upper to its lower edge, mm. */
    double height(boolean landscape) {
        return landscape ? shortSide : longSide;
    }

    PaperSize code() {
        return code;
    }
}

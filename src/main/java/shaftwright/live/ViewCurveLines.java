package shaftwright.live;

import static shaftwright.contract.Grid.POWER;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.SideDrawing;
import shaftwright.reading.Sizing;

/**
 * Coefficients of the hub path that a side's drawing follows: the shown scenario's own, or all's.
 */
enum ViewCurveLines implements LiveLine.Formula, LiveLine.Core {
    FORE_AFT(HubCurve.FORE_AFT, "Coefficient of fore-aft"),
    REACH_SQUARED(HubCurve.REACH_SQUARED, "Coefficient of squared reach"),
    CAMBER(HubCurve.CAMBER, "Coefficient of camber"),
    TOE(HubCurve.TOE, "Coefficient of toe"),
    PITCH(HubCurve.PITCH, "Coefficient of pitch");

    private final HubCurve curve;
    private final String label;

    ViewCurveLines(HubCurve curve, String label) {
        this.curve = curve;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        for (ViewCurveLines line : values()) {
            lines.add(
                    new LiveLine(
                            "view_coef_" + line.curve.word(),
                            Section.VIEW_WORK,
                            POWER,
                            line.label,
                            Quantity.NUMBER,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        String ofAll =
                this == PITCH
                        ? "IF({view_linked}=1,{linkage_pitch},0)"
                        : "{coef_" + curve.word() + "}";
        return "IF({path_ready}=1,IF({view_own}=1,INDEX({own_"
                + curve.word()
                + ":each},(card_index-1)*"
                + POWER.rows()
                + "+"
                + (index.row() + 1)
                + "),"
                + ofAll
                + "),NA())";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideDrawing drawing = sizing.drawingOrNull(index.side());
        return drawing == null
                ? CellValue.NOT_AVAILABLE
                : CellValue.of(curve.of(drawing.path(), drawing.pitch()).coefficient(index.row()));
    }
}

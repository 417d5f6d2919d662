package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.POWER;

import shaftwright.suspension.Polynomial;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Index;
import shaftwright.workbook.SideDrawing;
import shaftwright.workbook.Sizing;

/**
 * Coefficients of the hub path that a side's drawing follows: the shown scenario's own, or all's.
 */
enum ViewCurveLines implements LiveLine.Formula, LiveLine.Core {
    FORE_AFT("fore_aft", "Coefficient of fore-aft"),
    REACH_SQUARED("reach_squared", "Coefficient of squared reach"),
    CAMBER("camber", "Coefficient of camber"),
    TOE("toe", "Coefficient of toe"),
    PITCH("pitch", "Coefficient of pitch");

    private final String curve;
    private final String label;

    ViewCurveLines(String curve, String label) {
        this.curve = curve;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        for (ViewCurveLines line : values()) {
            lines.add(
                    new LiveLine(
                            "view_coef_" + line.curve,
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
                this == PITCH ? "IF({view_linked}=1,{linkage_pitch},0)" : "{coef_" + curve + "}";
        return "IF({path_ready}=1,IF({view_own}=1,INDEX({own_"
                + curve
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
                : CellValue.of(core(drawing).coefficient(index.row()));
    }

    private Polynomial core(SideDrawing drawing) {
        return switch (this) {
            case FORE_AFT -> drawing.path().foreAft();
            case REACH_SQUARED -> drawing.path().reachSquared();
            case CAMBER -> drawing.path().camber();
            case TOE -> drawing.path().toe();
            case PITCH -> drawing.pitch();
        };
    }
}

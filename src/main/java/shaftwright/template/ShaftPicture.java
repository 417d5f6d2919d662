package shaftwright.template;

import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTDLbls;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDLblPos;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextBody;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.STPresetColorVal;
import org.openxmlformats.schemas.drawingml.x2006.main.STTextWrappingType;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.build.Side;
import shaftwright.live.DrawnPart;

/**
 * The shaft to be cut, drawn to scale by a chart of lines that follows every change. Both axes run
 * in parts of the blank's length over a frame of fixed proportions, so that lengths and diameters
 * have one scale.
 */
final class ShaftPicture {
    /** Parts of the blank's length that the frame shows along and, half of it, across. */
    private static final double BESIDE = 0.02;

    private static final double HALF_HEIGHT = 0.1;

    private static final double ROW_POINTS = 16;

    /** Size of the words, hundredths of a point. */
    private static final int LETTERS = 800;

    private final Draft draft;
    private final XSSFSheet sheet;
    private final Side side;

    ShaftPicture(Draft draft, XSSFSheet sheet, Side side) {
        this.draft = draft;
        this.sheet = sheet;
        this.side = side;
    }

    /**
     * Lays the chart over rows of a page. Its points are laid out already.
     *
     * @param columns of the page, over which the chart reaches
     * @return the first row below the chart
     */
    int lay(int top, int columns) {
        double width = 0;
        for (int column = 0; column < columns; column++) {
            width += sheet.getColumnWidthInPixels(column) * 0.75;
        }
        double height = width * 2 * HALF_HEIGHT / (1 + 2 * BESIDE);
        int rows = (int) Math.ceil(height / ROW_POINTS);
        for (int row = top; row < top + rows; row++) {
            Draft.cell(sheet, row, 0);
            sheet.getRow(row).setHeightInPoints((float) (height / rows));
        }
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        XSSFChart chart =
                drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 0, top, columns, top + rows));
        draw(chart);
        return top + rows;
    }

    private void draw(XSSFChart chart) {
        LineDrawing drawing =
                new LineDrawing(chart, -BESIDE, 1 + BESIDE, -HALF_HEIGHT, HALF_HEIGHT);
        for (DrawnPart part : DrawnPart.values()) {
            line(drawing, part);
        }
        drawing.plot();
        int number = 0;
        for (DrawnPart part : DrawnPart.values()) {
            if (part.worded()) {
                words(chart.getCTChart().getPlotArea().getScatterChartArray(0), number, part);
            }
            number++;
        }
        drawing.fill();
    }

    private void line(LineDrawing drawing, DrawnPart part) {
        XDDFScatterChartData.Series series =
                drawing.line(
                        points("draw_along", part),
                        points("draw_up", part),
                        switch (part) {
                            case OUTLINE -> LineDrawing.stroke(1.5, PresetLineDash.SOLID);
                            case CUT_OFF -> LineDrawing.stroke(1, PresetLineDash.DASH);
                            case SPLINE_ENDS -> LineDrawing.stroke(1, PresetLineDash.DOT);
                            default -> LineDrawing.stroke(0.5, PresetLineDash.SOLID);
                        });
        if (part.worded()) {
            CellPlace words = draft.places().run(part.words(), side).place(0);
            SeriesTitle.set(
                    series,
                    draft.laid(),
                    new CellReference(words.sheet(), words.row(), words.column(), true, true));
        }
    }

    private Area points(String name, DrawnPart part) {
        Area area = draft.places().run(name, side).area();
        int first = area.firstRow() + part.first();
        return new Area(
                area.sheet(),
                first,
                area.firstColumn(),
                first + part.size() - 1,
                area.firstColumn());
    }

    /** A point shows the name of its series, which is a cell. */
    private static void words(CTScatterChart lines, int number, DrawnPart part) {
        CTDLbls labels = lines.getSerArray(number).addNewDLbls();
        CTTextBody text = labels.addNewTxPr();
        text.addNewBodyPr().setWrap(STTextWrappingType.NONE);
        text.addNewLstStyle();
        CTTextCharacterProperties letters = text.addNewP().addNewPPr().addNewDefRPr();
        letters.setSz(LETTERS);
        letters.addNewSolidFill().addNewPrstClr().setVal(STPresetColorVal.BLACK);
        labels.addNewDLblPos()
                .setVal(
                        switch (part) {
                            case GROOVE_IN, CUT_IN -> STDLblPos.R;
                            case GROOVE_OUT, CUT_OUT -> STDLblPos.L;
                            default -> STDLblPos.B;
                        });
        labels.addNewShowLegendKey().setVal(false);
        labels.addNewShowVal().setVal(false);
        labels.addNewShowCatName().setVal(false);
        labels.addNewShowSerName().setVal(true);
        labels.addNewShowPercent().setVal(false);
        labels.addNewShowBubbleSize().setVal(false);
    }
}

package shaftwright.template;

import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;

/**
 * A chart's series named by a cell. Programs that do not look at the cells show the text that the
 * chart keeps: what a constant cell holds, and for a live one nothing until a fill.
 */
final class SeriesTitle {
    private SeriesTitle() {}

    static void set(XDDFChartData.Series series, LaidSheets laid, CellReference title) {
        LaidCells cells = laid.of(title.getSheetName());
        series.setTitle(cells.text(title.getRow(), title.getCol()), title);
    }
}

package shaftwright.template;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTManualLayout;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDispBlanksAs;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLayoutMode;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLayoutTarget;
import shaftwright.book.Area;

/**
 * A chart of black lines that fill its whole frame, between fixed ends of both axes: a drawing to
 * scale when the frame has the proportions of what the axes span.
 */
final class LineDrawing {
    private final XSSFChart chart;
    private final XDDFValueAxis across;
    private final XDDFValueAxis up;
    private final XDDFScatterChartData data;

    /** Axes that are not shown, between these values. */
    LineDrawing(XSSFChart chart, double left, double right, double bottom, double top) {
        this.chart = chart;
        across = axis(AxisPosition.BOTTOM, left, right);
        up = axis(AxisPosition.LEFT, bottom, top);
        across.crossAxis(up);
        up.crossAxis(across);
        data = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, across, up);
        data.setStyle(ScatterStyle.LINE);
    }

    private XDDFValueAxis axis(AxisPosition position, double least, double most) {
        XDDFValueAxis axis = chart.createValueAxis(position);
        axis.setCrosses(AxisCrosses.MIN);
        axis.setMinimum(least);
        axis.setMaximum(most);
        axis.setVisible(false);
        return axis;
    }

    XDDFValueAxis across() {
        return across;
    }

    XDDFValueAxis up() {
        return up;
    }

    /** A line through points whose places stand in two columns of a sheet. */
    XDDFScatterChartData.Series line(Area x, Area y, XDDFLineProperties stroke) {
        XDDFScatterChartData.Series series =
                (XDDFScatterChartData.Series) data.addSeries(source(x), source(y));
        series.setSmooth(false);
        series.setMarkerStyle(MarkerStyle.NONE);
        XDDFShapeProperties shape = new XDDFShapeProperties();
        shape.setLineProperties(stroke);
        series.setShapeProperties(shape);
        return series;
    }

    /** Evaluating every formula for the cached points would take longer than all the rest. */
    private static XDDFNumericalDataSource<Double> source(Area area) {
        CellRangeAddress range =
                new CellRangeAddress(
                        area.firstRow(), area.lastRow(), area.firstColumn(), area.lastColumn());
        return XDDFDataSourcesFactory.fromArray(
                new Double[area.size()], range.formatAsString(area.sheet(), true));
    }

    static XDDFLineProperties stroke(double points, PresetLineDash dash) {
        return stroke(points, dash, PresetColor.BLACK);
    }

    static XDDFLineProperties stroke(double points, PresetLineDash dash, PresetColor colour) {
        XDDFLineProperties line =
                new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(colour)));
        line.setWidth(points);
        line.setPresetDash(new XDDFPresetLineDash(dash));
        return line;
    }

    /** Plots what was added. */
    void plot() {
        chart.plot(data);
    }

    /** The lines fill the frame, or the two ways would have two scales. */
    void fill() {
        CTManualLayout layout =
                (chart.getCTChart().getPlotArea().isSetLayout()
                                ? chart.getCTChart().getPlotArea().getLayout()
                                : chart.getCTChart().getPlotArea().addNewLayout())
                        .addNewManualLayout();
        layout.addNewLayoutTarget().setVal(STLayoutTarget.INNER);
        layout.addNewXMode().setVal(STLayoutMode.EDGE);
        layout.addNewYMode().setVal(STLayoutMode.EDGE);
        layout.addNewX().setVal(0);
        layout.addNewY().setVal(0);
        layout.addNewW().setVal(1);
        layout.addNewH().setVal(1);
        if (!chart.getCTChart().isSetAutoTitleDeleted()) {
            chart.getCTChart().addNewAutoTitleDeleted();
        }
        chart.getCTChart().getAutoTitleDeleted().setVal(true);
        chart.getCTChart().addNewDispBlanksAs().setVal(STDispBlanksAs.GAP);
        if (chart.getCTChartSpace().isSetRoundedCorners()) {
            chart.getCTChartSpace().unsetRoundedCorners();
        }
        chart.getCTChartSpace().addNewRoundedCorners().setVal(false);
    }
}

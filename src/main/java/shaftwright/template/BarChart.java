package shaftwright.template;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFChartLegend;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDispBlanksAs;
import shaftwright.book.Area;
import shaftwright.units.LengthUnit;

/** Pairs of bars over a foot of names: the first grey, the second white. */
final class BarChart {
    private final LaidSheets laid;
    private final XSSFChart chart;
    private final XDDFBarChartData data;
    private final XDDFCategoryDataSource foot;
    private final LengthUnit unit;

    /**
     * An empty chart.
     *
     * @param foot cells with the names below the bars
     * @param names what those hold now
     */
    BarChart(
            LaidSheets laid,
            XSSFSheet sheet,
            XSSFClientAnchor anchor,
            String title,
            LengthUnit unit,
            Area foot,
            String... names) {
        this.laid = laid;
        this.unit = unit;
        this.foot = XDDFDataSourcesFactory.fromArray(names, range(foot));
        chart = sheet.createDrawingPatriarch().createChart(anchor);
        chart.setTitleText(title);
        chart.setTitleOverlay(false);
        XDDFCategoryAxis across = chart.createCategoryAxis(AxisPosition.BOTTOM);
        across.setTickLabelPosition(AxisTickLabelPosition.LOW);
        XDDFValueAxis value = chart.createValueAxis(AxisPosition.LEFT);
        value.setCrosses(AxisCrosses.AUTO_ZERO);
        value.getOrAddMajorGridProperties().setLineProperties(line(PresetColor.GRAY));
        across.crossAxis(value);
        value.crossAxis(across);
        data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, across, value);
        data.setBarDirection(BarDirection.COL);
    }

    /** Draws pairs of bars; titles must be cells, or other programs lose them on saving. */
    void draw(Area first, CellReference firstTitle, Area second, CellReference secondTitle) {
        series(first, firstTitle, PresetColor.DIM_GRAY);
        series(second, secondTitle, PresetColor.WHITE);
        chart.plot(data);
        finish();
    }

    private void series(Area area, CellReference title, PresetColor fill) {
        XDDFChartData.Series series = data.addSeries(foot, values(area));
        SeriesTitle.set(series, laid, title);
        XDDFShapeProperties shape = new XDDFShapeProperties();
        shape.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(fill)));
        shape.setLineProperties(line(PresetColor.BLACK));
        series.setShapeProperties(shape);
    }

    private static XDDFLineProperties line(PresetColor colour) {
        XDDFLineProperties line =
                new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(colour)));
        line.setWidth(0.75);
        return line;
    }

    /** Points follow when the workbook is filled. */
    private static XDDFNumericalDataSource<Double> values(Area area) {
        return XDDFDataSourcesFactory.fromArray(new Double[area.size()], range(area));
    }

    private static String range(Area area) {
        return new CellRangeAddress(
                        area.firstRow(), area.lastRow(), area.firstColumn(), area.lastColumn())
                .formatAsString(area.sheet(), true);
    }

    private void finish() {
        XDDFChartLegend legend = chart.getOrAddLegend();
        legend.setPosition(LegendPosition.RIGHT);
        legend.setOverlay(false);
        chart.getCTChart().addNewDispBlanksAs().setVal(STDispBlanksAs.GAP);
        if (chart.getCTChartSpace().isSetRoundedCorners()) {
            chart.getCTChartSpace().unsetRoundedCorners();
        }
        chart.getCTChartSpace().addNewRoundedCorners().setVal(false);
        var axis = chart.getCTChart().getPlotArea().getValAxArray(0);
        if (!axis.isSetNumFmt()) {
            axis.addNewNumFmt();
        }
        axis.getNumFmt().setFormatCode(unit == LengthUnit.INCH ? "0.0#" : "0");
        axis.getNumFmt().setSourceLinked(false);
    }
}

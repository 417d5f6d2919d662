package shaftwright.workbook.template;

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
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFChartLegend;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDispBlanksAs;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.Area;

/** Bars, one pair a column: left side grey, right side white. */
final class ComparisonCharts {
    static final String NAME = "Compared charts";

    private static final int ROWS = 20;
    private static final int WIDE = 7;
    private static final int TITLES = 60;

    private final ComparisonDraft draft;
    private final XSSFSheet sheet;

    private ComparisonCharts(ComparisonDraft draft, XSSFSheet sheet) {
        this.draft = draft;
        this.sheet = sheet;
    }

    static void lay(ComparisonDraft draft, XSSFSheet sheet) {
        ComparisonCharts charts = new ComparisonCharts(draft, sheet);
        for (int column = 0; column <= 2 * WIDE; column++) {
            sheet.setColumnWidth(column, (column == WIDE ? 2 : 12) * 256);
        }
        draft.text(sheet, 0, 0, "Compared: book and scenario along the foot", draft.look().title());
        // Titles of series must be cells, or they are lost when other programs save the file.
        draft.text(sheet, TITLES, 0, "left", draft.look().note());
        draft.text(sheet, TITLES, 1, "right", draft.look().note());
        String unit = ", " + draft.unit().symbol();
        charts.chart(0, "Length window (below 0: short by)" + unit, "compare_result_window");
        charts.chart(1, "Least slack before bottoming" + unit, "compare_result_slack_in");
        charts.chart(2, "Least slack before pull-out" + unit, "compare_result_slack_out");
        charts.chart(3, "Shaft end to end, E" + unit, "compare_result_e");
        Page.printOnOnePage(sheet);
        sheet.getPrintSetup().setLandscape(true);
        draft.workbook()
                .setPrintArea(draft.workbook().getSheetIndex(sheet), 0, 2 * WIDE, 0, TITLES - 1);
    }

    private void chart(int number, String title, String name) {
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        int column = number % 2 * (WIDE + 1);
        int row = 2 + number / 2 * (ROWS + 1);
        XSSFChart chart =
                drawing.createChart(
                        drawing.createAnchor(0, 0, 0, 0, column, row, column + WIDE, row + ROWS));
        chart.setTitleText(title);
        chart.setTitleOverlay(false);
        XDDFCategoryAxis foot = chart.createCategoryAxis(AxisPosition.BOTTOM);
        foot.setTickLabelPosition(AxisTickLabelPosition.LOW);
        XDDFValueAxis value = chart.createValueAxis(AxisPosition.LEFT);
        value.setCrosses(AxisCrosses.AUTO_ZERO);
        value.getOrAddMajorGridProperties().setLineProperties(line(PresetColor.GRAY));
        foot.crossAxis(value);
        value.crossAxis(foot);
        XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, foot, value);
        data.setBarDirection(BarDirection.COL);
        series(data, name + "_left", 0, PresetColor.DIM_GRAY);
        series(data, name + "_right", 1, PresetColor.WHITE);
        chart.plot(data);
        finish(chart);
    }

    private void series(XDDFBarChartData data, String name, int title, PresetColor fill) {
        XDDFChartData.Series series = data.addSeries(keys(), values(draft.area(name)));
        series.setTitle("", new CellReference(NAME, TITLES, title, true, true));
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

    private org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource keys() {
        String[] keys = new String[draft.columns().size()];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = draft.columns().get(i).key();
        }
        return XDDFDataSourcesFactory.fromArray(keys, range(draft.area("comparison_key")));
    }

    /** Points follow when the workbook is filled. */
    private static org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource<Double> values(
            Area area) {
        return XDDFDataSourcesFactory.fromArray(new Double[area.size()], range(area));
    }

    private static String range(Area area) {
        return new CellRangeAddress(
                        area.firstRow(), area.lastRow(), area.firstColumn(), area.lastColumn())
                .formatAsString(area.sheet(), true);
    }

    private void finish(XSSFChart chart) {
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
        axis.getNumFmt().setFormatCode(draft.unit() == LengthUnit.INCH ? "0.0#" : "0");
        axis.getNumFmt().setSourceLinked(false);
    }
}

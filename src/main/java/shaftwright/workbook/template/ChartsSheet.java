package shaftwright.workbook.template;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFChartLegend;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTValAx;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDispBlanksAs;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.Area;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.Grid;
import shaftwright.workbook.Side;
import shaftwright.workbook.template.Run.Direction;

/** One side's charts over travel, all scenarios overlaid, limits drawn heavy. */
final class ChartsSheet {
    /** Most scenarios that a chart can keep apart without colour. */
    private static final int MOST_LINES = 8;

    private static final int CHART_ROWS = 20;
    private static final int CHART_COLUMNS = 6;

    private ChartsSheet() {}

    static String name(Side side) {
        return "Charts " + side.word();
    }

    static void lay(Draft draft, Side side) {
        XSSFSheet sheet = draft.sheet(name(side));
        for (int column = 0; column <= 2 * CHART_COLUMNS; column++) {
            sheet.setColumnWidth(column, (column == CHART_COLUMNS ? 2 : 12) * 256);
        }
        draft.text(sheet, 0, 0, "Charts, " + side.word() + " side", draft.look().title());
        String unit = draft.unit().symbol();
        Canvas canvas = new Canvas(draft, side, sheet);
        canvas.chart(0, "Slack before bottoming, " + unit, "table_slack_in", "limit_slack");
        canvas.chart(1, "Slack before pull-out, " + unit, "table_slack_out", "limit_slack");
        canvas.chart(2, "Inner joint angle, °", "table_angle_in", "limit_angle_in");
        canvas.chart(3, "Outer joint angle, °", "table_angle_out", "limit_angle_out");
        canvas.chart(4, "Centre distance, " + unit, "table_distance", "");
        Page.printOnOnePage(sheet);
    }

    private record Canvas(Draft draft, Side side, XSSFSheet sheet) {
        void chart(int number, String title, String table, String limit) {
            XSSFDrawing drawing = sheet.createDrawingPatriarch();
            int column = number % 2 * (CHART_COLUMNS + 1);
            int row = 2 + number / 2 * (CHART_ROWS + 1);
            XSSFClientAnchor anchor =
                    drawing.createAnchor(
                            0, 0, 0, 0, column, row, column + CHART_COLUMNS, row + CHART_ROWS);
            XSSFChart chart = drawing.createChart(anchor);
            chart.setTitleText(title);
            chart.setTitleOverlay(false);
            XDDFValueAxis travel =
                    axis(
                            chart,
                            AxisPosition.BOTTOM,
                            "Travel, " + draft.unit().symbol() + " (droop − … bump +)");
            XDDFValueAxis value = axis(chart, AxisPosition.LEFT, title);
            travel.crossAxis(value);
            value.crossAxis(travel);
            XDDFScatterChartData data =
                    (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, travel, value);
            data.setStyle(ScatterStyle.LINE);
            int lines = Math.min(MOST_LINES, draft.scenarios());
            for (int scenario = 0; scenario < lines; scenario++) {
                scenario(data, table, scenario);
            }
            if (!limit.isEmpty()) {
                limit(data, limit);
            }
            chart.plot(data);
            finish(chart);
        }

        private void scenario(XDDFScatterChartData data, String table, int scenario) {
            Run x = draft.places().run("table_travel", side);
            Run y = draft.places().run(table, side);
            XDDFScatterChartData.Series series =
                    series(data, column(x, scenario), column(y, scenario));
            Run titles = draft.places().run("work_letter", Side.LEFT);
            series.setTitle("", reference(titles.place(scenario)));
            style(series, LINES.get(scenario));
        }

        private void limit(XDDFScatterChartData data, String limit) {
            Run x = draft.places().run("limit_travel", side);
            Run y = draft.places().run(limit, side);
            XDDFScatterChartData.Series series = series(data, x.area(), y.area());
            series.setTitle(
                    "", new CellReference(name(y.sheet()), y.row() - 1, y.column(), true, true));
            style(series, LIMIT);
        }

        private static String name(String sheet) {
            return sheet;
        }

        private static XDDFScatterChartData.Series series(
                XDDFScatterChartData data, Area x, Area y) {
            return (XDDFScatterChartData.Series) data.addSeries(source(x), source(y));
        }

        /** Evaluating every formula for the cached points would take longer than all the rest. */
        private static XDDFNumericalDataSource<Double> source(Area area) {
            Double[] none = new Double[area.size()];
            CellRangeAddress range =
                    new CellRangeAddress(
                            area.firstRow(), area.lastRow(), area.firstColumn(), area.lastColumn());
            return XDDFDataSourcesFactory.fromArray(none, range.formatAsString(area.sheet(), true));
        }

        private static CellReference reference(CellPlace place) {
            return new CellReference(place.sheet(), place.row(), place.column(), true, true);
        }

        private Area column(Run block, int scenario) {
            if (block.direction() != Direction.BLOCK) {
                throw new IllegalStateException(block.name() + " is no block");
            }
            int column = block.column() + scenario;
            return new Area(
                    block.sheet(),
                    block.row(),
                    column,
                    block.row() + Grid.TABLE.rows() - 1,
                    column);
        }

        private XDDFValueAxis axis(XSSFChart chart, AxisPosition position, String title) {
            XDDFValueAxis axis = chart.createValueAxis(position);
            axis.setTitle(title);
            axis.setCrosses(AxisCrosses.MIN);
            axis.setTickLabelPosition(AxisTickLabelPosition.LOW);
            axis.getOrAddShapeProperties()
                    .setLineProperties(line(new Stroke("black", PresetLineDash.SOLID, 1)));
            axis.getOrAddMajorGridProperties()
                    .setLineProperties(line(new Stroke("grey", PresetLineDash.DOT, 0.5)));
            return axis;
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
            for (CTValAx axis : chart.getCTChart().getPlotArea().getValAxArray()) {
                axis.getTitle().addNewOverlay().setVal(false);
                if (!axis.isSetNumFmt()) {
                    axis.addNewNumFmt();
                }
                axis.getNumFmt().setFormatCode(draft.unit() == LengthUnit.INCH ? "0.0#" : "0");
                axis.getNumFmt().setSourceLinked(false);
            }
        }
    }

    /** How a line is drawn: told apart by dash and weight, not by colour. */
    private record Stroke(String colour, PresetLineDash dash, double points) {}

    private static final List<Stroke> LINES =
            List.of(
                    new Stroke("black", PresetLineDash.SOLID, 1.5),
                    new Stroke("black", PresetLineDash.DASH, 1.5),
                    new Stroke("black", PresetLineDash.DOT, 1.75),
                    new Stroke("black", PresetLineDash.DASH_DOT, 1.5),
                    new Stroke("mid", PresetLineDash.LARGE_DASH, 1.5),
                    new Stroke("mid", PresetLineDash.LARGE_DASH_DOT, 1.5),
                    new Stroke("mid", PresetLineDash.LARGE_DASH_DOT_DOT, 1.5),
                    new Stroke("grey", PresetLineDash.SOLID, 3));

    private static final Stroke LIMIT = new Stroke("black", PresetLineDash.SOLID, 4);

    private static XDDFLineProperties line(Stroke stroke) {
        PresetColor colour =
                switch (stroke.colour()) {
                    case "mid" -> PresetColor.DIM_GRAY;
                    case "grey" -> PresetColor.SILVER;
                    default -> PresetColor.BLACK;
                };
        XDDFLineProperties line =
                new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(colour)));
        line.setWidth(stroke.points());
        line.setPresetDash(new XDDFPresetLineDash(stroke.dash()));
        return line;
    }

    private static void style(XDDFScatterChartData.Series series, Stroke stroke) {
        series.setSmooth(false);
        series.setMarkerStyle(MarkerStyle.NONE);
        XDDFShapeProperties shape = new XDDFShapeProperties();
        shape.setLineProperties(line(stroke));
        series.setShapeProperties(shape);
    }
}

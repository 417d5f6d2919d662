package shaftwright.template;

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
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTValAx;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDispBlanksAs;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.live.ChartStroke;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.shaft.ShaftEnd;
import shaftwright.template.Run.Direction;
import shaftwright.units.LengthUnit;

/**
 * One side's charts: over travel with all scenarios overlaid and limits drawn heavy, the band of
 * lengths with the chosen shaft inside, and bars of every scenario's least slack.
 */
final class ChartsSheet {
    private static final String LEGEND_HEAD =
            "Lines of the charts over travel; the heavy one is the limit";

    private static final int LEGEND_ROW = 2;
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
        draft.title(sheet, "Charts, " + side.word() + " side");
        legend(draft, side, sheet);
        String unit = draft.unit().symbol();
        Canvas canvas = new Canvas(draft, side, sheet);
        canvas.chart(0, "Slack before bottoming, " + unit, "table_slack_in", "limit_slack");
        canvas.chart(1, "Slack before pull-out, " + unit, "table_slack_out", "limit_slack");
        canvas.chart(2, "Inner joint angle, % of its limit", "angle_share_in", "limit_share");
        canvas.chart(3, "Outer joint angle, % of its limit", "angle_share_out", "limit_share");
        canvas.chart(4, "Centre distance, " + unit, "table_distance", "");
        canvas.band(5, "Card's shaft, E, and its limits, " + unit);
        canvas.bars(6, "Least slack of each scenario, " + unit);
        draft.printout(sheet).onOnePage();
    }

    /** Names beside samples of their lines, which a chart's own legend can't leave out. */
    private static void legend(Draft draft, Side side, XSSFSheet sheet) {
        LiveLine line = LiveLines.all().line("chart_legend");
        draft.text(sheet, 1, 0, LEGEND_HEAD, draft.look().boldLabel());
        draft.live(
                line,
                side,
                sheet,
                LEGEND_ROW,
                0,
                Direction.DOWN,
                draft.look().result(line.quantity()));
        for (int row = LEGEND_ROW; row < LEGEND_ROW + draft.scenarios(); row++) {
            sheet.addMergedRegion(new CellRangeAddress(row, row, 0, CHART_COLUMNS - 1));
        }
    }

    /** Fibres of a boot of the card's scenario over the travel, between what the boot takes. */
    static void boot(
            Draft draft, Side side, XSSFSheet sheet, ShaftEnd end, XSSFClientAnchor anchor) {
        String word = end == ShaftEnd.INNER ? "Inner" : "Outer";
        String of = "_" + end.shortWord();
        Canvas canvas = new Canvas(draft, side, sheet);
        String title = word + " boot's fibres, " + draft.unit().symbol();
        XSSFChart chart = canvas.titled(anchor, title);
        XDDFScatterChartData data = canvas.overTravel(chart, title);
        String travel = "boot_table_travel";
        canvas.drawn(data, travel, "boot_table_least" + of, stroke(ChartStroke.SOLID));
        canvas.drawn(data, travel, "boot_table_most" + of, stroke(ChartStroke.DASH));
        canvas.drawn(data, travel, "boot_table_takes_least" + of, LIMIT);
        canvas.drawn(data, travel, "boot_table_takes_most" + of, LIMIT);
        chart.plot(data);
        canvas.finish(chart);
    }

    private record Canvas(Draft draft, Side side, XSSFSheet sheet) {
        void chart(int number, String title, String table, String limit) {
            XSSFChart chart = titled(anchor(number, 1), title);
            XDDFScatterChartData data = overTravel(chart, title);
            for (int scenario = 0; scenario < draft.scenarios(); scenario++) {
                int column = scenario;
                ChartStroke.of(scenario)
                        .ifPresent(stroke -> scenario(data, table, column, stroke(stroke)));
            }
            if (!limit.isEmpty()) {
                drawn(data, "limit_travel", limit, LIMIT);
            }
            chart.plot(data);
            finish(chart);
            chart.deleteLegend();
        }

        /** The chosen shaft between what bottoms and what pulls out. */
        void band(int number, String title) {
            XSSFChart chart = titled(anchor(number, 1), title);
            XDDFScatterChartData data = overTravel(chart, title);
            drawn(data, "band_travel", "band_longest", stroke(ChartStroke.SOLID));
            drawn(data, "band_travel", "band_chosen", LIMIT);
            drawn(data, "band_travel", "band_shortest", stroke(ChartStroke.DASH));
            chart.plot(data);
            finish(chart);
        }

        /** Both slacks of every scenario, side by side. */
        void bars(int number, String title) {
            Run in = draft.places().run("result_slack_in", side);
            Run out = draft.places().run("result_slack_out", side);
            String[] letters = new String[draft.scenarios()];
            for (int scenario = 0; scenario < letters.length; scenario++) {
                letters[scenario] = ScenarioOutcome.letter(scenario);
            }
            new BarChart(
                            draft.laid(),
                            sheet,
                            anchor(number, 2),
                            title,
                            draft.unit(),
                            draft.places().run("work_letter", Side.LEFT).area(),
                            letters)
                    .draw(
                            in.area(),
                            new CellReference(in.sheet(), in.row(), 0, true, true),
                            out.area(),
                            new CellReference(out.sheet(), out.row(), 0, true, true));
        }

        private XSSFClientAnchor anchor(int number, int wide) {
            int column = number % 2 * (CHART_COLUMNS + 1);
            int row = LEGEND_ROW + draft.scenarios() + 1 + number / 2 * (CHART_ROWS + 1);
            return sheet.createDrawingPatriarch()
                    .createAnchor(
                            0,
                            0,
                            0,
                            0,
                            column,
                            row,
                            column + wide * CHART_COLUMNS + wide - 1,
                            row + CHART_ROWS);
        }

        private XSSFChart titled(XSSFClientAnchor anchor, String title) {
            XSSFChart chart = sheet.createDrawingPatriarch().createChart(anchor);
            chart.setTitleText(title);
            chart.setTitleOverlay(false);
            return chart;
        }

        private XDDFScatterChartData overTravel(XSSFChart chart, String title) {
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
            return data;
        }

        private void scenario(
                XDDFScatterChartData data, String table, int scenario, Stroke stroke) {
            Run x = draft.places().run("table_travel", side);
            Run y = draft.places().run(table, side);
            XDDFScatterChartData.Series series =
                    series(data, column(x, scenario), column(y, scenario));
            Run titles = draft.places().run("work_letter", Side.LEFT);
            SeriesTitle.set(series, draft.laid(), reference(titles.place(scenario)));
            style(series, stroke);
        }

        /** A line of its own cells, named by the cell above them. */
        private void drawn(XDDFScatterChartData data, String travel, String name, Stroke stroke) {
            Run x = draft.places().run(travel, side);
            Run y = draft.places().run(name, side);
            XDDFScatterChartData.Series series = series(data, x.area(), y.area());
            SeriesTitle.set(
                    series,
                    draft.laid(),
                    new CellReference(y.sheet(), y.row() - 1, y.column(), true, true));
            style(series, stroke);
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
            if (block.direction() == Direction.DOWN && block.grid() == Grid.POSITION) {
                int first = block.row() + scenario * Grid.POSITION.rows();
                return new Area(
                        block.sheet(),
                        first,
                        block.column(),
                        first + Grid.POSITION.rows() - 1,
                        block.column());
            }
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

    private static Stroke stroke(ChartStroke of) {
        return switch (of) {
            case SOLID -> new Stroke("black", PresetLineDash.SOLID, 1.5);
            case DASH -> new Stroke("black", PresetLineDash.DASH, 1.5);
            case DOT -> new Stroke("black", PresetLineDash.DOT, 1.75);
            case DASH_DOT -> new Stroke("black", PresetLineDash.DASH_DOT, 1.5);
            case LONG_DASH -> new Stroke("mid", PresetLineDash.LARGE_DASH, 1.5);
            case LONG_DASH_DOT -> new Stroke("mid", PresetLineDash.LARGE_DASH_DOT, 1.5);
            case LONG_DASH_DOT_DOT -> new Stroke("mid", PresetLineDash.LARGE_DASH_DOT_DOT, 1.5);
            case WIDE -> new Stroke("grey", PresetLineDash.SOLID, 3);
        };
    }

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

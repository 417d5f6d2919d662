package shaftwright.workbook.xlsx;

import java.util.ArrayList;
import java.util.List;

/** The package's list of what its parts are; parts may have any name. */
final class ContentTypes implements PartReader.Walk {
    private static final String CHART =
            "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";
    private static final String EXTENDED_CHART = "application/vnd.ms-office.chartex+xml";

    private final List<String> charts = new ArrayList<>();

    private ContentTypes() {}

    /** Names of the parts that are charts. */
    static List<String> charts(PartText text) {
        ContentTypes types = new ContentTypes();
        PartReader.walk(text, types);
        return types.charts;
    }

    @Override
    public void over(PartReader reader) {
        while (reader.nextChild()) {
            String type = reader.attribute("ContentType");
            String part = reader.attribute("PartName");
            if (part != null && (CHART.equals(type) || EXTENDED_CHART.equals(type))) {
                charts.add(part.startsWith("/") ? part.substring(1) : part);
            }
            reader.skip();
        }
    }
}

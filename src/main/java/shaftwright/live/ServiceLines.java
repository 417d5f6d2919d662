package shaftwright.live;

import shaftwright.contract.Grid;
import shaftwright.reading.ServiceLog;
import shaftwright.reading.Sizing;

/** One sentence on the service log. */
final class ServiceLines {
    private static final String BOLTS_DUE = "Bolts were never torqued again: do it now.";
    private static final String BOLTS_DONE = "Bolts were torqued again.";
    private static final String BOOTS_DUE =
            " A torn boot was not replaced: do it before the next run.";

    private ServiceLines() {}

    static void declare(LiveLines lines) {
        LineSet.in(lines, Section.SERVICE, Grid.BOOK)
                .revised(ReadLines.RANGES)
                .text("service_says", "The log says")
                .is(
                        "IF(COUNTBLANK(service_hours)=ROWS(service_hours),\"\","
                                + "IF(COUNTIF(service_bolts,\"yes\")=0,\"%s\",\"%s\"))"
                                        .formatted(BOLTS_DUE, BOLTS_DONE)
                                + "&IF(COUNTIF(service_boots,\"torn\")"
                                + (">COUNTIF(service_boots,\"replaced\"),\"" + BOOTS_DUE)
                                + "\",\"\")",
                        ServiceLines::says);
    }

    private static String says(Sizing sizing) {
        ServiceLog log = ServiceLog.of(sizing.inputs());
        String bolts = log.boltsDue() ? BOLTS_DUE : log.rows() > 0 ? BOLTS_DONE : "";
        return bolts + (log.bootsDue() ? BOOTS_DUE : "");
    }
}

package shaftwright.live;

import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.ServiceLog;
import shaftwright.reading.Sizing;

/** One sentence on the service log. */
enum ServiceLines implements LiveLine.Formula, LiveLine.Core {
    SAYS;

    private static final String BOLTS_DUE = "Bolts were never torqued again: do it now.";
    private static final String BOLTS_DONE = "Bolts were torqued again.";
    private static final String BOOTS_DUE =
            " A torn boot was not replaced: do it before the next run.";

    static void declare(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "service_says",
                        Section.SERVICE,
                        Grid.BOOK,
                        "The log says",
                        Quantity.TEXT,
                        SAYS,
                        SAYS));
    }

    @Override
    public String at(Index index) {
        return "IF(COUNTBLANK(service_hours)=ROWS(service_hours),\"\",IF(COUNTIF(service_bolts,\"yes\")=0,\""
                + BOLTS_DUE
                + "\",\""
                + BOLTS_DONE
                + "\"))&IF(COUNTIF(service_boots,\"torn\")>COUNTIF(service_boots,\"replaced\"),\""
                + BOOTS_DUE
                + "\",\"\")";
    }

    @Override
    public int revised() {
        return ReadLines.RANGES;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        ServiceLog log = ServiceLog.of(sizing.inputs());
        String bolts = log.boltsDue() ? BOLTS_DUE : log.rows() > 0 ? BOLTS_DONE : "";
        return CellValue.of(bolts + (log.bootsDue() ? BOOTS_DUE : ""));
    }
}

package shaftwright.reading;

import java.util.List;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Index;

/**
 * What the service log comes to: its rows are those with hours.
 *
 * @param rows in use
 * @param torqued rows in which the bolts were torqued again
 * @param torn rows with a torn boot
 * @param replaced rows in which boots were replaced
 */
public record ServiceLog(int rows, int torqued, int torn, int replaced) {
    /** The log of a workbook. */
    public static ServiceLog of(InputValues inputs) {
        int rows = 0;
        int torqued = 0;
        int torn = 0;
        int replaced = 0;
        for (int row = 0; row < inputs.rows("service_hours", Side.LEFT); row++) {
            Index index = new Index(Side.LEFT, 0, row);
            String boots = inputs.text("service_boots", index);
            rows += Double.isNaN(inputs.number("service_hours", index)) ? 0 : 1;
            torqued += inputs.text("service_bolts", index).equalsIgnoreCase("yes") ? 1 : 0;
            torn += boots.equalsIgnoreCase("torn") ? 1 : 0;
            replaced += boots.equalsIgnoreCase("replaced") ? 1 : 0;
        }
        return new ServiceLog(rows, torqued, torn, replaced);
    }

    /** Whether the vehicle has run and its bolts were never torqued again. */
    public boolean boltsDue() {
        return rows > 0 && torqued == 0;
    }

    /** Whether more boots were torn than replaced. */
    public boolean bootsDue() {
        return torn > replaced;
    }

    void check(InputValues inputs, List<Problem> problems) {
        Index first = new Index(Side.LEFT, 0, 0);
        if (boltsDue()) {
            problems.add(
                    Problem.warning(
                            inputs.place("service_bolts", first),
                            "service log",
                            "no row in which the bolts were torqued again",
                            "bolts torqued again after the first run"));
        }
        if (bootsDue()) {
            problems.add(
                    Problem.warning(
                            inputs.place("service_boots", first),
                            "service log",
                            "a torn boot and none replaced since",
                            "a new boot and clean grease before the next run"));
        }
    }
}

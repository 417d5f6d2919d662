package shaftwright.live;

import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.WHOLE;

import java.util.function.ToDoubleFunction;
import shaftwright.book.CellValue;
import shaftwright.build.Duty;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.InputKind;
import shaftwright.reading.Sizing;
import shaftwright.tyre.Tyre;

/** What all scenarios' strength rests on: share of a shaft, least own figure, duty rows. */
enum StrengthBookLines implements LiveLine.Formula, LiveLine.Core {
    TORQUE_NM(
            "torque_nm",
            Section.BOOK_WORK,
            Grid.BOOK,
            "Unit of torque, N·m",
            NUMBER,
            "IF(unit=\"inch\"," + InputKind.TORQUE.inchFactor() + ",1)"),
    TORQUE_SHARE(
            "torque_share",
            Section.BOOK_WORK,
            Grid.BOOK,
            "Part of the torque that one shaft may get",
            NUMBER,
            "IF(differential=\"locked\",1,IF(differential=\"limited slip\",IF("
                    + "ISNUMBER(torque_bias_read),torque_bias_read/(1+torque_bias_read),0.5),0.5))"),
    OWN_ROW(
            "own_row",
            Section.BOOK_WORK,
            Grid.BOOK,
            "Row of the least own figure",
            WHOLE,
            "IF(COUNT(rating_torque_read)=0,0,"
                    + "MATCH(MIN(rating_torque_read),rating_torque_read,0))"),
    DUTY_PART("duty_part", Section.PARTS_WORK, Grid.DUTY_SLOT, "Share", NUMBER, duty("1")),
    DUTY_WEIGHT(
            "duty_weight",
            Section.PARTS_WORK,
            Grid.DUTY_SLOT,
            "Share by torque cubed",
            NUMBER,
            duty("{duty_torque_read}^3")),
    DUTY_WAY(
            "duty_way",
            Section.PARTS_WORK,
            Grid.DUTY_SLOT,
            "Turns a minute by tyre diameter, mm",
            NUMBER,
            "IF(COUNT({duty_share_read},{duty_torque_read},{duty_speed_read})=3,"
                    + "{duty_speed_read}*"
                    + Tyre.MM_PER_KM
                    + "/"
                    + Tyre.MINUTES_PER_HOUR
                    + "/"
                    + Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER
                    + ",0)");

    private final String name;
    private final Section section;
    private final Grid grid;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    StrengthBookLines(
            String name,
            Section section,
            Grid grid,
            String label,
            Quantity quantity,
            String formula) {
        this.name = name;
        this.section = section;
        this.grid = grid;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (StrengthBookLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            line.section,
                            line.grid,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    private static String duty(String by) {
        return "IF(COUNT({duty_share_read},{duty_torque_read},{duty_speed_read})=3,"
                + "{duty_share_read}*"
                + by
                + ",0)";
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return CellValue.of(core(sizing, index));
    }

    private double core(Sizing sizing, Index index) {
        return switch (this) {
            case TORQUE_NM -> InputKind.TORQUE.factor(sizing.unit());
            case TORQUE_SHARE -> sizing.strength().differential().share();
            case OWN_ROW -> sizing.strength().leastOwn();
            case DUTY_PART -> duty(sizing, index, Duty::share);
            case DUTY_WEIGHT ->
                    duty(sizing, index, duty -> duty.share() * Math.pow(duty.torque(), 3));
            case DUTY_WAY -> duty(sizing, index, duty -> new Tyre(1).wheelSpeed(duty.speed()));
        };
    }

    /** 0 in a row that lacks a figure. */
    private static double duty(Sizing sizing, Index index, ToDoubleFunction<Duty> figure) {
        return sizing.strength().duty(index.row()).stream().mapToDouble(figure).sum();
    }
}

package shaftwright.study;

import java.util.List;
import shaftwright.study.SideDrawing.Way;
import shaftwright.units.LengthUnit;

/**
 * The frame of a side's drawing: squares that measure a plain number of a unit, as many each way,
 * with everything drawn inside.
 */
public final class DrawingFrame {
    /** Plain numbers below ten. */
    public static final List<Double> PLAIN = List.of(1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0);

    private final SideDrawing drawing;
    private final LengthUnit unit;

    DrawingFrame(SideDrawing drawing, LengthUnit unit) {
        this.drawing = drawing;
        this.unit = unit;
    }

    /** Side of the least square that has room for all wherever its frame begins, in the unit. */
    public double wanted() {
        double span = 0;
        for (Way way : Way.values()) {
            span = Math.max(span, drawing.high(way) - drawing.low(way));
        }
        return span / unit.mm() / (ViewPart.SQUARES - 1);
    }

    /** The power of ten not above that. */
    public double power() {
        return Math.pow(10, Math.floor(rounded(Math.log10(wanted()), 9)));
    }

    /** Side of a square, in the unit: the least plain number that has room for all. */
    public double square() {
        double power = power();
        double times = rounded(wanted() / power, 9);
        for (double plain : PLAIN) {
            if (times <= plain) {
                return power * plain;
            }
        }
        return power * 10;
    }

    /** Side of a square, mm. */
    public double step() {
        return square() * unit.mm();
    }

    /** Squares from the origin to the frame's lower edge; along the vehicle things are centred. */
    public double base(Way way) {
        double floor = Math.floor(rounded(drawing.low(way) / step(), 6));
        if (way != Way.AHEAD) {
            return floor;
        }
        double ceiling = Math.ceil(rounded(drawing.high(way) / step(), 6));
        return floor - Math.floor((ViewPart.SQUARES - (ceiling - floor)) / 2);
    }

    /** Where a row of the drawing's points stands, in squares from the lower edge. */
    public double place(int row, Way way) {
        return way.of(drawing.points().get(row)) / step() - base(way);
    }

    /** What an edge of squares stands for, in the unit, rounded as spreadsheets round. */
    public double edge(Way way, int square) {
        return rounded((base(way) + square) * square(), 6);
    }

    /** Halves away from zero, as spreadsheets round. */
    private static double rounded(double value, int decimals) {
        double shift = Math.pow(10, decimals);
        return Math.signum(value) * Math.floor(Math.abs(value) * shift + 0.5) / shift;
    }
}

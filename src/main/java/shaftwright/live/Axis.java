package shaftwright.live;

import java.util.Arrays;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import shaftwright.suspension.Vector;

/** An axis of the vehicle, along which formulas have a vector's parts. */
enum Axis {
    X(
            "forward",
            Vector::x,
            "{path_fore_aft}",
            "{steer_?_out}*SIN({path_toe})*COS({path_camber})+{steer_?_ahead}*COS({path_toe})"
                    + "+{steer_?_up}*SIN({path_camber})*SIN({path_toe})"),
    Y(
            "outward",
            Vector::y,
            "SQRT({path_reach_squared})+{shift_hub}",
            "{steer_?_out}*COS({path_toe})*COS({path_camber})-{steer_?_ahead}*SIN({path_toe})"
                    + "+{steer_?_up}*SIN({path_camber})*COS({path_toe})"),
    Z(
            "up",
            Vector::z,
            "{ride_rise}+{travel}",
            "{steer_?_up}*COS({path_camber})-{steer_?_out}*SIN({path_camber})");

    /** Which way it points, in labels. */
    final String way;

    /** A vector's part along it. */
    final ToDoubleFunction<Vector> part;

    /** Where the outer datum stands along it at a row's travel, as a formula. */
    final String datum;

    private final String turned;

    Axis(String way, ToDoubleFunction<Vector> part, String datum, String turned) {
        this.way = way;
        this.part = part;
        this.datum = datum;
        this.turned = turned;
    }

    /** At the end of names. */
    String suffix() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /**
     * Part of a steered hub's stub axis, or of its datum's move, turned with camber and toe.
     *
     * @param what word in the names of its parts
     */
    String turned(String what) {
        return turned.replace("?", what);
    }

    /** A formula of each axis's part, put together. */
    static String joined(String between, Function<Axis, String> formula) {
        return Arrays.stream(values()).map(formula).collect(Collectors.joining(between));
    }
}

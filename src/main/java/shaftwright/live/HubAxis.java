package shaftwright.live;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import shaftwright.suspension.HubAxes;
import shaftwright.suspension.Vector;

/** A direction that goes along with a hub: outward along the stub axis, level ahead, up. */
enum HubAxis {
    OUT("outward", Vector::x, "Stub axis"),
    AHEAD("ahead", Vector::y, "Level ahead,"),
    UP("up", Vector::z, "Square to both,");

    /** In labels, which way it goes. */
    final String outward;

    /** A distance's part along it, as {@link HubAxes#partsOf} gives it. */
    final ToDoubleFunction<Vector> part;

    /** In labels, what it is. */
    final String label;

    HubAxis(String outward, ToDoubleFunction<Vector> part, String label) {
        this.outward = outward;
        this.part = part;
        this.label = label;
    }

    /** In names. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    Vector of(HubAxes axes) {
        return switch (this) {
            case OUT -> axes.out();
            case AHEAD -> axes.ahead();
            case UP -> axes.up();
        };
    }

    /** Whether it has a part this way at all: level ahead has none upward. */
    boolean goes(ViewWay way) {
        return this != AHEAD || way != ViewWay.UP;
    }

    /**
     * Its part in a direction of the vehicle, as a formula.
     *
     * @param camber line of the hub's camber
     * @param toe line of its toe
     */
    String formula(ViewWay way, String camber, String toe) {
        String sinCamber = "SIN({" + camber + "})";
        String cosCamber = "COS({" + camber + "})";
        String sinToe = "SIN({" + toe + "})";
        String cosToe = "COS({" + toe + "})";
        return switch (this) {
            case OUT ->
                    switch (way) {
                        case AHEAD -> sinToe + "*" + cosCamber;
                        case OUT -> cosToe + "*" + cosCamber;
                        case UP -> "0-" + sinCamber;
                    };
            case AHEAD -> way == ViewWay.AHEAD ? cosToe : "0-" + sinToe;
            case UP ->
                    switch (way) {
                        case AHEAD -> sinCamber + "*" + sinToe;
                        case OUT -> sinCamber + "*" + cosToe;
                        case UP -> cosCamber;
                    };
        };
    }
}

package shaftwright.live;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import shaftwright.formula.Pieces;
import shaftwright.suspension.HubAxes;
import shaftwright.suspension.Vector;

/** A direction that goes along with a hub: outward along the stub axis, level ahead, up. */
enum HubAxis {
    OUT("outward", Vector::x, "Stub axis", "along stub axis", "kingpin_out"),
    AHEAD("ahead", Vector::y, "Level ahead,", "level ahead", "kingpin_level"),
    UP("up", Vector::z, "Square to both,", "up", "kingpin_up");

    /** A distance's part along it, as {@link HubAxes#partsOf} gives it. */
    final ToDoubleFunction<Vector> part;

    /** In names. */
    final String word = name().toLowerCase(Locale.ROOT);

    /**
     * {@code <hub>} in names; {@code <outward>} in labels, which way it goes, {@code <stub>} what
     * it is, {@code <along>} along what; {@code <kingpin>} the kingpin line's part.
     */
    final Pieces words;

    HubAxis(
            String outward,
            ToDoubleFunction<Vector> part,
            String stub,
            String along,
            String kingpin) {
        this.part = part;
        words =
                Pieces.of("hub", word)
                        .and("outward", outward)
                        .and("stub", stub)
                        .and("along", along)
                        .and("kingpin", kingpin);
    }

    HubAxis next() {
        return switch (this) {
            case OUT -> AHEAD;
            case AHEAD -> UP;
            case UP -> OUT;
        };
    }

    Vector of(HubAxes axes) {
        return switch (this) {
            case OUT -> axes.out();
            case AHEAD -> axes.ahead();
            case UP -> axes.up();
        };
    }

    /** Whether it has a part this way at all: level ahead has none upward. */
    boolean goes(Axis axis) {
        return this != AHEAD || axis != Axis.Z;
    }

    /** The directions that have a part along an axis of the vehicle. */
    static HubAxis[] along(Axis axis) {
        return Arrays.stream(values()).filter(hub -> hub.goes(axis)).toArray(HubAxis[]::new);
    }

    /**
     * Its part in a direction of the vehicle, as a formula.
     *
     * @param hub name of the lines of the hub's camber and toe, without these words
     */
    String formula(Axis axis, String hub) {
        String open =
                switch (this) {
                    case OUT ->
                            switch (axis) {
                                case X -> "SIN({<h>toe})*COS({<h>camber})";
                                case Y -> "COS({<h>toe})*COS({<h>camber})";
                                case Z -> "0-SIN({<h>camber})";
                            };
                    case AHEAD -> axis == Axis.X ? "COS({<h>toe})" : "0-SIN({<h>toe})";
                    case UP ->
                            switch (axis) {
                                case X -> "SIN({<h>camber})*SIN({<h>toe})";
                                case Y -> "SIN({<h>camber})*COS({<h>toe})";
                                case Z -> "COS({<h>camber})";
                            };
                };
        return Pieces.of("h", hub).in(open);
    }
}

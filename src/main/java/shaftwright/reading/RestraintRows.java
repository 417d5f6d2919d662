package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shaftwright.build.Side;
import shaftwright.build.Surroundings;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.RestraintInputs;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.Vector;
import shaftwright.travel.BootGap.Tube;
import shaftwright.travel.CarriedPoint;
import shaftwright.travel.Restraint;
import shaftwright.travel.Span;

/**
 * The tables of dampers, straps and bump stops, and of tubes near a boot, as one side sees them:
 * what could be read, and from which rows. Rows that lack something are left out; {@link
 * RestraintCheck} says so.
 *
 * @param surroundings what was read
 * @param restraints row of each damper, strap or bump stop, from 0
 * @param tubes row of each tube, from 0
 */
public record RestraintRows(
        Surroundings surroundings, List<Integer> restraints, List<Integer> tubes) {
    /**
     * Reads them.
     *
     * @param source the side whose typed cells the side uses
     * @param linkage what may carry points
     */
    static RestraintRows of(InputValues inputs, Side source, SideLinkage linkage) {
        Reader reader = new Reader(inputs, source, linkage);
        Surroundings found = Surroundings.NONE;
        List<Integer> restraints = new ArrayList<>();
        for (int row = 0; row < Grid.RESTRAINT_SLOT.rows(); row++) {
            Optional<Restraint> restraint = reader.restraint(row);
            if (restraint.isPresent()) {
                found = found.and(restraint.get());
                restraints.add(row);
            }
        }
        List<Integer> tubes = new ArrayList<>();
        for (int row = 0; row < Grid.TUBE_SLOT.rows(); row++) {
            Optional<Tube> tube = reader.tube(row);
            if (tube.isPresent()) {
                found = found.and(tube.get());
                tubes.add(row);
            }
        }
        return new RestraintRows(found, restraints, tubes);
    }

    /** Whether anything is typed into a row of a table. */
    static boolean isTyped(InputValues inputs, Grid grid, int row) {
        for (Input input : Contract.inputs(grid)) {
            if (input.kind().numeric()
                    && !Double.isNaN(inputs.number(input.name(), Side.LEFT, row))) {
                return true;
            }
        }
        return false;
    }

    /** What a row of the table of restraints is. */
    static Restraint.Kind kind(InputValues inputs, int row) {
        String word = inputs.text("restraint_kind", new Index(Side.LEFT, 0, row));
        for (Restraint.Kind kind : Restraint.Kind.values()) {
            if (kind.word().equals(word.toLowerCase(Locale.ROOT))) {
                return kind;
            }
        }
        return Restraint.Kind.DAMPER;
    }

    private record Reader(InputValues inputs, Side source, SideLinkage linkage) {
        Optional<Restraint> restraint(int row) {
            if (!isTyped(inputs, Grid.RESTRAINT, row)) {
                return Optional.empty();
            }
            Restraint.Kind kind = kind(inputs, row);
            Optional<CarriedPoint> fixed = point(Linkage.FRAME, "restraint_fixed", row);
            Optional<CarriedPoint> moving =
                    point(part("restraint_carried_by", row), "restraint_moving", row);
            double shortest = kind.closes() ? number("restraint_shortest", row) : Double.NaN;
            double longest = kind.opens() ? number("restraint_longest", row) : Double.NaN;
            double least = Double.isNaN(shortest) ? 0 : shortest;
            double most = Double.isNaN(longest) ? Double.POSITIVE_INFINITY : longest;
            boolean stopsNothing = least == 0 && Double.isInfinite(most);
            if (fixed.isEmpty() || moving.isEmpty() || stopsNothing || !(most > least)) {
                return Optional.empty();
            }
            String name = text("restraint_name", row);
            Span span =
                    new Span(
                            name.isEmpty() ? kind.word() + " " + (row + 1) : name,
                            fixed.get(),
                            moving.get());
            return Optional.of(
                    switch (kind) {
                        case DAMPER -> Restraint.damper(span, least, most);
                        case STRAP -> Restraint.strap(span, most);
                        case BUMP_STOP -> Restraint.bumpStop(span, least);
                    });
        }

        /** A tube with all its sizes. */
        Optional<Tube> tube(int row) {
            String part = part("tube_carried_by", row);
            Optional<CarriedPoint> first = point(part, "tube_first", row);
            Optional<CarriedPoint> second = point(part, "tube_second", row);
            double radius = number("tube_diameter", row) / 2;
            return first.isEmpty() || second.isEmpty() || Double.isNaN(radius)
                    ? Optional.empty()
                    : Optional.of(new Tube(first.get(), second.get(), radius));
        }

        /**
         * A typed point as seen from the inner datum and the vehicle's centre plane; empty when it
         * is not complete, or nothing moves it.
         */
        private Optional<CarriedPoint> point(String part, String name, int row) {
            Vector place =
                    new Vector(
                            number(name + "_ahead", row) - inputs.number("inner_ahead", source, 0),
                            number(name + "_out", row),
                            number(name + "_height", row)
                                    - inputs.number("inner_height", source, 0));
            return linkage.carries(part) && !Double.isNaN(place.norm())
                    ? Optional.of(new CarriedPoint(part, place))
                    : Optional.empty();
        }

        private String part(String column, int row) {
            return RestraintInputs.part(text(column, row));
        }

        private double number(String name, int row) {
            return inputs.number(name, Side.LEFT, row);
        }

        private String text(String name, int row) {
            return inputs.text(name, new Index(Side.LEFT, 0, row));
        }
    }
}

package shaftwright.study;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import shaftwright.build.MeasuringCheck;
import shaftwright.doubt.SlackTable;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.SideResult;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.OrthogonalBasis;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.travel.WheelMotion;

/** A side's hub path by the source that it comes from. */
public sealed interface PathStudy {
    /** Where the hub goes. */
    HubPath path();

    /**
     * How the wheel moves along it.
     *
     * @param centreToDatum vehicle's centre plane to the inner datum, mm; empty when it was not
     *     measured
     */
    WheelMotion motion(OptionalDouble centreToDatum);

    /** Whether a length may be judged by it: two measured heights are too few. */
    boolean mayGiveVerdict();

    /** The same facts with what is to be said of the source. */
    PathFacts said(PathFacts facts);

    /** Ways in which the path may be off at the rows of a shaft's position table. */
    PathSpread spread(List<FittedPosition> rows);

    /** Slack of a shaft over its travel, and how the path behind it may be off. */
    default SlackTable slacks(SideResult shaft) {
        List<FittedPosition> rows = shaft.fitted();
        // A correction is in doubt as a whole: half its doubt is one standard deviation.
        PathSpread spread = spread(rows).along(shaft.setup().correction().doubt() / 2, rows.size());
        return new SlackTable(
                rows.stream().mapToDouble(FittedPosition::slackIn).toArray(),
                rows.stream().mapToDouble(FittedPosition::outwardReserve).toArray(),
                spread.shapes(),
                spread.allowance());
    }

    /**
     * How a path may be off.
     *
     * @param shapes mm of distance at each row for one standard deviation, one way after the other
     * @param allowance mm at each row that the true path may lie off, either way
     */
    @SuppressWarnings("ArrayRecordComponent") // Goes into a table that is read by trials at once.
    record PathSpread(double[][] shapes, double allowance) {
        /** The same with all of a number of rows off together, mm for one standard deviation. */
        PathSpread along(double deviation, int rows) {
            if (deviation == 0) {
                return this;
            }
            double[][] all = Arrays.copyOf(shapes, shapes.length + 1);
            all[shapes.length] = new double[rows];
            Arrays.fill(all[shapes.length], deviation);
            return new PathSpread(all, allowance);
        }
    }

    /**
     * By tape readings.
     *
     * @param contradiction how they contradict each other, told by rows and columns as typed
     * @param checksOpen what was not made sure of before measuring
     */
    record Measured(
            MeasuredPath measured,
            ReadingContradiction contradiction,
            Set<MeasuringCheck> checksOpen)
            implements PathStudy {
        @Override
        public HubPath path() {
            return measured.path();
        }

        @Override
        public WheelMotion motion(OptionalDouble centreToDatum) {
            return WheelMotion.measured(path(), centreToDatum);
        }

        @Override
        public boolean mayGiveVerdict() {
            return measured.mayGiveVerdict();
        }

        @Override
        public PathFacts said(PathFacts facts) {
            PathFacts read = facts.without(PathFacts.Unread.of(measured)).open(checksOpen);
            return contradiction.exists() ? read.contradicting(contradiction) : read;
        }

        /** Each share of the curve is off by itself; so is what suspect readings move. */
        @Override
        public PathSpread spread(List<FittedPosition> rows) {
            OrthogonalBasis basis = measured.reach().basis();
            double scale = measured.reach().test().scale();
            FitDoubt doubt = measured.path().doubt();
            int terms = basis.degree() + 1;
            boolean shifted = measured.reach().test().leftOut() > 0;
            double[][] shapes = new double[terms + (shifted ? 1 : 0)][rows.size()];
            for (int k = 0; k < terms; k++) {
                Polynomial term = basis.polynomial(k);
                double norm = Math.sqrt(basis.norm(k));
                for (int row = 0; row < rows.size(); row++) {
                    HubPoint hub = rows.get(row).position().hub();
                    shapes[k][row] = scale * term.at(hub.s()) / norm / (2 * hub.distance());
                }
            }
            if (shifted) {
                for (int row = 0; row < rows.size(); row++) {
                    HubPoint hub = rows.get(row).position().hub();
                    // In doubt as a whole: half of it is one deviation.
                    shapes[terms][row] = doubt.shift(hub.s(), hub.distance()) / 2;
                }
            }
            return new PathSpread(shapes, doubt.allowance());
        }
    }

    /** By a linkage. */
    record Solved(LinkageStudy linkage) implements PathStudy {
        @Override
        public HubPath path() {
            return linkage.path();
        }

        /** Its inner datum is known. */
        @Override
        public WheelMotion motion(OptionalDouble centreToDatum) {
            return WheelMotion.ofLinkage(path(), linkage.linkage().linkage(), linkage.solved());
        }

        @Override
        public boolean mayGiveVerdict() {
            return true;
        }

        @Override
        public PathFacts said(PathFacts facts) {
            return facts;
        }

        /** A linkage's path is in doubt as a whole: half its doubt is one standard deviation. */
        @Override
        public PathSpread spread(List<FittedPosition> rows) {
            double[] shape =
                    rows.stream().mapToDouble(row -> row.position().hub().doubt() / 2).toArray();
            return new PathSpread(new double[][] {shape}, 0);
        }
    }
}

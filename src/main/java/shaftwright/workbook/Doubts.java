package shaftwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.doubt.Combined;
import shaftwright.doubt.Contribution;
import shaftwright.doubt.Contribution.Kind;
import shaftwright.doubt.SlackChances;
import shaftwright.doubt.SlackTable;
import shaftwright.doubt.SlackTrials;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.SideResult;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.OrthogonalBasis;
import shaftwright.suspension.Polynomial;

/** What may move the joints, row by row, and the margins and chances that follow. */
public final class Doubts {
    private static final int ROWS = Grid.DOUBT_SLOT.rows();

    private final InputValues inputs;
    private final Contribution[] rows = new Contribution[ROWS];
    private final List<Contribution> counting = new ArrayList<>();
    private final Combined combined;

    Doubts(InputValues inputs) {
        this.inputs = inputs;
        for (int row = 0; row < ROWS; row++) {
            rows[row] = contributionOrNull(row);
            if (rows[row] != null) {
                counting.add(rows[row]);
            }
        }
        combined = Combined.of(counting);
    }

    private Contribution contributionOrNull(int row) {
        Index index = new Index(Side.LEFT, 0, row);
        double amount = inputs.number("doubt_amount", index);
        double repeats = inputs.number("doubt_repeats", index);
        if (Double.isNaN(amount + repeats)
                || inputs.text("doubt_on", index).equalsIgnoreCase("no")) {
            return null;
        }
        String typed = inputs.text("doubt_name", index);
        String name = typed.isBlank() ? "row " + (row + 1) : typed;
        return switch (inputs.text("doubt_kind", index).toLowerCase(Locale.ROOT)) {
            case "graduation" -> new Contribution(name, Kind.GRADUATION, amount);
            case "scatter" -> Contribution.ofRepeats(name, amount, (int) repeats);
            case "bias" -> new Contribution(name, Kind.BIAS, amount);
            default -> new Contribution(name, Kind.PLUS_MINUS, amount);
        };
    }

    /** Whether a row counts. */
    public boolean counts(int row) {
        return rows[row] != null;
    }

    /** Standard uncertainty of a row, mm. */
    public double standard(int row) {
        return counts(row) ? rows[row].standard() : 0;
    }

    /** What a row can do at worst, mm. */
    public double worst(int row) {
        return counts(row) ? rows[row].worst() : 0;
    }

    /** What of a row is always there, mm. */
    public double bias(int row) {
        return counts(row) ? rows[row].bias() : 0;
    }

    /** All rows that count, together. */
    public Combined combined() {
        return combined;
    }

    /** Rows that count. */
    public int size() {
        return counting.size();
    }

    /** Whether a margin built up was asked for. */
    boolean builtUpWanted() {
        String choice = inputs.text("margin_choice");
        return !choice.isEmpty() && !choice.equalsIgnoreCase("typed");
    }

    /** The margin built up, mm; NaN when typed ones count or no row does. */
    public double margin() {
        if (counting.isEmpty()) {
            return Double.NaN;
        }
        return switch (inputs.text("margin_choice").toLowerCase(Locale.ROOT)) {
            case "root-sum-square" -> combined.rootSumSquare();
            case "worst case" -> combined.worst();
            default -> Double.NaN;
        };
    }

    /** Whether trials are wanted. */
    public boolean trialsWanted() {
        return inputs.number("trial_count") > 0;
    }

    /**
     * Trials of a side's shaft.
     *
     * @param path that its positions were computed from
     */
    SlackChances chances(SideResult result, SidePath path) {
        return SlackTrials.run(
                table(result, path),
                counting,
                (long) inputs.number("trial_seed"),
                (int) inputs.number("trial_count"));
    }

    private static SlackTable table(SideResult result, SidePath path) {
        return path.linkage().isChosen()
                ? table(result)
                : table(result, path.readings().path().orElseThrow());
    }

    /** A linkage's path is in doubt as a whole: half its doubt is one standard deviation. */
    private static SlackTable table(SideResult result) {
        List<FittedPosition> fitted = result.fitted();
        double[] in = new double[fitted.size()];
        double[] out = new double[fitted.size()];
        double[][] shapes = new double[1][fitted.size()];
        for (int row = 0; row < in.length; row++) {
            FittedPosition position = fitted.get(row);
            in[row] = position.slackIn();
            out[row] = position.outwardReserve();
            shapes[0][row] = position.position().hub().doubt() / 2;
        }
        return new SlackTable(in, out, shapes, 0);
    }

    private static SlackTable table(SideResult result, MeasuredPath measured) {
        List<FittedPosition> fitted = result.fitted();
        OrthogonalBasis basis = measured.reach().basis();
        double scale = measured.reach().test().scale();
        FitDoubt doubt = measured.path().doubt();
        double[] in = new double[fitted.size()];
        double[] out = new double[fitted.size()];
        Polynomial[] terms = new Polynomial[basis.degree() + 1];
        boolean shifted = measured.reach().test().leftOut() > 0;
        double[][] shapes = new double[terms.length + (shifted ? 1 : 0)][fitted.size()];
        for (int k = 0; k < terms.length; k++) {
            terms[k] = basis.polynomial(k);
        }
        for (int row = 0; row < in.length; row++) {
            FittedPosition position = fitted.get(row);
            in[row] = position.slackIn();
            out[row] = position.outwardReserve();
            HubPoint hub = position.position().hub();
            double twice = 2 * hub.distance();
            for (int k = 0; k < terms.length; k++) {
                shapes[k][row] = scale * terms[k].at(hub.s()) / Math.sqrt(basis.norm(k)) / twice;
            }
            if (shifted) {
                // What suspect readings move is in doubt as a whole: half of it is one deviation.
                shapes[terms.length][row] = doubt.shift(hub.s(), hub.distance()) / 2;
            }
        }
        return new SlackTable(in, out, shapes, doubt.allowance());
    }
}

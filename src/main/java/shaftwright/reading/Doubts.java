package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shaftwright.build.MarginChoice;
import shaftwright.build.Side;
import shaftwright.build.Trials;
import shaftwright.build.Uncertainty;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.doubt.Contribution;
import shaftwright.doubt.Contribution.Kind;

/** What may move the joints, row by row as it is typed. */
public final class Doubts {
    private static final int ROWS = Grid.DOUBT_SLOT.rows();

    private final InputValues inputs;
    private final List<Optional<Contribution>> rows = new ArrayList<>(ROWS);
    private final Uncertainty uncertainty;

    Doubts(InputValues inputs) {
        this.inputs = inputs;
        List<Contribution> counting = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            rows.add(contribution(row));
            rows.get(row).ifPresent(counting::add);
        }
        uncertainty = new Uncertainty(counting, margins(), trials());
    }

    /** What a row may move the joints by, while it counts. */
    private Optional<Contribution> contribution(int row) {
        Index index = new Index(Side.LEFT, 0, row);
        double amount = inputs.number("doubt_amount", index);
        double repeats = inputs.number("doubt_repeats", index);
        if (Double.isNaN(amount + repeats)
                || inputs.text("doubt_on", index).equalsIgnoreCase("no")) {
            return Optional.empty();
        }
        String typed = inputs.text("doubt_name", index);
        String name = typed.isBlank() ? "row " + (row + 1) : typed;
        return Optional.of(
                switch (inputs.text("doubt_kind", index).toLowerCase(Locale.ROOT)) {
                    case "graduation" -> new Contribution(name, Kind.GRADUATION, amount);
                    case "scatter" -> Contribution.ofRepeats(name, amount, (int) repeats);
                    case "bias" -> new Contribution(name, Kind.BIAS, amount);
                    default -> new Contribution(name, Kind.PLUS_MINUS, amount);
                });
    }

    /** Whether a row counts. */
    public boolean counts(int row) {
        return rows.get(row).isPresent();
    }

    /** Standard uncertainty of a row, mm. */
    public double standard(int row) {
        return rows.get(row).map(Contribution::standard).orElse(0.0);
    }

    /** What a row can do at worst, mm. */
    public double worst(int row) {
        return rows.get(row).map(Contribution::worst).orElse(0.0);
    }

    /** What of a row is always there, mm. */
    public double bias(int row) {
        return rows.get(row).map(Contribution::bias).orElse(0.0);
    }

    /** What the rows come to, as the core has it. */
    public Uncertainty uncertainty() {
        return uncertainty;
    }

    private MarginChoice margins() {
        String typed = inputs.text("margin_choice");
        for (MarginChoice choice : MarginChoice.values()) {
            if (choice.word().equalsIgnoreCase(typed)) {
                return choice;
            }
        }
        return MarginChoice.TYPED;
    }

    private Optional<Trials> trials() {
        double count = inputs.number("trial_count");
        return count > 0
                ? Optional.of(new Trials((int) count, (long) inputs.number("trial_seed")))
                : Optional.empty();
    }
}

package shaftwright.live;

import static shaftwright.contract.Grid.BOOK;
import static shaftwright.contract.Grid.DOUBT_SLOT;
import static shaftwright.contract.Grid.POWER;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.WHOLE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.doubt.SlackChances;
import shaftwright.reading.Sizing;

/**
 * How likely each side's shaft runs out of travel, by trial: an engine block, and the fingerprints
 * of what it follows from beyond path and joints.
 */
enum ChanceLines implements EngineBlock.Figure, EngineBlock.Present {
    BOTTOMING("bottoming", "Bottoms somewhere, in 100", NUMBER),
    BOTTOMING_BUMP("bottoming_bump", "… at full bump", NUMBER),
    BOTTOMING_DROOP("bottoming_droop", "… at full droop", NUMBER),
    PULL_OUT("pull_out", "Pulls out somewhere, in 100", NUMBER),
    PULL_OUT_BUMP("pull_out_bump", "… at full bump", NUMBER),
    PULL_OUT_DROOP("pull_out_droop", "… at full droop", NUMBER),
    WINDOW("window", "Least slack both ways together, mean", SHOWN_LENGTH),
    SPREAD("spread", "… standard deviation", SHOWN_LENGTH);

    private static final EngineBlock BLOCK =
            new EngineBlock("chance", SCENARIO_SIDE, Section.SIDE_WORK, Section.CHANCES);

    /** Terms of a power's fingerprint. */
    private static final int HAT_TERMS = 2;

    /** Terms of a row's fingerprint. */
    private static final int TERMS = 3;

    private final String name;
    private final String label;
    private final Quantity quantity;

    ChanceLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        hat(lines);
        rows(lines);
        Fingerprint all =
                new Fingerprint(lines)
                        .whole(
                                "path_print",
                                "joint_print_in",
                                "joint_print_out",
                                "doubt_all_print",
                                "own_sum")
                        .sum("hat_print")
                        .whole("stance_print")
                        .measured("spacing_final", "tape_mm", "t_low", "t_high")
                        .measured("variance_distance", "variance_height", "curve_allowance")
                        .measured("trial_count_read", "trial_seed_read");
        BLOCK.stamp(
                lines,
                all,
                "AND({ready}=1,IF(ISNUMBER(trial_count_read),trial_count_read>0,FALSE))",
                BOTTOMING);
        for (ChanceLines line : values()) {
            BLOCK.figure(lines, line.name, line.label, line.quantity, line, line);
        }
    }

    @Override
    public boolean has(Sizing sizing, Index index) {
        return chances(sizing, index).isPresent();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SlackChances chances = chances(sizing, index).orElseThrow();
        return CellValue.of(
                switch (this) {
                    case BOTTOMING -> 100 * chances.bottoming();
                    case BOTTOMING_BUMP -> 100 * chances.bottomingAtBump();
                    case BOTTOMING_DROOP -> 100 * chances.bottomingAtDroop();
                    case PULL_OUT -> 100 * chances.pullOut();
                    case PULL_OUT_BUMP -> 100 * chances.pullOutAtBump();
                    case PULL_OUT_DROOP -> 100 * chances.pullOutAtDroop();
                    case WINDOW -> chances.windowMean() / sizing.unit().mm();
                    case SPREAD -> chances.windowSpread() / sizing.unit().mm();
                });
    }

    private static Optional<SlackChances> chances(Sizing sizing, Index index) {
        return sizing.scenario(index.scenario()).side(index.side()).chances();
    }

    /** The variance of the fit tells its terms: where readings stand and how good they are. */
    private static void hat(LiveLines lines) {
        HatPrint hat =
                new HatPrint(new Fingerprint(lines).millionth("coef_hat").thousandth("coef_shift"));
        lines.add(
                new LiveLine(
                                "hat_print",
                                Section.PATH_WORK,
                                POWER,
                                "Fingerprint of the hat",
                                WHOLE,
                                hat,
                                hat)
                        .revised(2));
    }

    private record HatPrint(Fingerprint print) implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            return "IF({path_ready}=1," + print.formula(HAT_TERMS * index.row()) + ",NA())";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return sizing.path(index.side()).chosen().isPresent()
                    ? CellValue.of(print.of(sizing, index, HAT_TERMS * index.row()))
                    : CellValue.NOT_AVAILABLE;
        }
    }

    /** The order of rows counts: it decides which random number each gets. */
    private static void rows(LiveLines lines) {
        RowPrint row =
                new RowPrint(
                        new Fingerprint(lines)
                                .measured("doubt_standard", "doubt_worst", "doubt_fixed"));
        lines.add(
                new LiveLine(
                        "doubt_print",
                        Section.PARTS_WORK,
                        DOUBT_SLOT,
                        "Fingerprint of the row",
                        WHOLE,
                        row,
                        row));
        RowPrint all = new RowPrint(new Fingerprint(lines).sum("doubt_print").measured("tape_mm"));
        lines.add(
                new LiveLine(
                        "doubt_all_print",
                        Section.BOOK_WORK,
                        BOOK,
                        "Fingerprint of what may move",
                        WHOLE,
                        all,
                        all));
    }

    /** Each row's terms have weights of their own. */
    private record RowPrint(Fingerprint print) implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            return print.formula(TERMS * index.row());
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return CellValue.of(print.of(sizing, index, TERMS * index.row()));
        }
    }
}

package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;

/** Inputs of margins built up, trials and spares: no one of them must be given. */
public final class DoubtInputs {
    private static final Range NOT_NEGATIVE = new Range(0, 5_000);

    private DoubtInputs() {}

    static void doubt(List<Input> all) {
        all.add(
                Input.words(
                        "margin_choice",
                        Grid.BOOK,
                        "Margins are",
                        InputKind.CHOICE,
                        List.of("typed", "root-sum-square", "worst case"),
                        "typed: as in each scenario. Else as built up from the table on the sheet Doubt, the same both ways. Empty: typed."));
        all.add(
                Input.number(
                                "trial_count",
                                Grid.BOOK,
                                "Trials",
                                InputKind.COUNT,
                                new Range(0, 100000),
                                new Range(0, 20000),
                                "Vehicles tried, each a little different. 5000 tell a chance of 1 in 100 to within 3 in 1000. Empty: none.")
                        .orElse(0));
        all.add(
                Input.number(
                                "trial_seed",
                                Grid.BOOK,
                                "Where the random numbers start",
                                InputKind.COUNT,
                                new Range(0, 99999),
                                new Range(0, 99999),
                                "Any whole number; the same one gives the same chances again.")
                        .orElse(1));
        all.add(
                Input.words(
                        "doubt_name",
                        Grid.DOUBT,
                        "What may move",
                        InputKind.TEXT,
                        List.of(),
                        "Mounts, flex, tape on joint sizes. The doubt of the fitted readings counts by itself and stays out of this list."));
        all.add(
                Input.words(
                        "doubt_kind",
                        Grid.DOUBT,
                        "Stated as",
                        InputKind.CHOICE,
                        List.of("plus or minus", "graduation", "scatter", "bias"),
                        "graduation: a division of the tape. scatter: standard deviation. bias: always there, sign unknown. Empty: plus or minus."));
        all.add(
                Input.length(
                        "doubt_amount",
                        Grid.DOUBT,
                        "Amount",
                        NOT_NEGATIVE,
                        new Range(0, 20),
                        "Along the shaft."));
        all.add(
                Input.number(
                                "doubt_repeats",
                                Grid.DOUBT,
                                "Mean of",
                                InputKind.COUNT,
                                new Range(1, 1000),
                                new Range(1, 20),
                                "Readings that a scatter is the mean of. Empty: 1.")
                        .orElse(1));
        all.add(
                Input.words(
                        "doubt_on",
                        Grid.DOUBT,
                        "Counts",
                        InputKind.CHOICE,
                        List.of("yes", "no"),
                        "no: left out for now. Empty: yes."));
    }

    static void spares(List<Input> all) {
        all.add(
                Input.number(
                                "spare_shafts",
                                Grid.BOOK,
                                "Spare shafts",
                                InputKind.COUNT,
                                new Range(0, 50),
                                new Range(0, 4),
                                "Carried or kept on the shelf.")
                        .orElse(0));
        all.add(
                Input.number(
                                "spare_joints_inner",
                                Grid.BOOK,
                                "Spare inner joints",
                                InputKind.COUNT,
                                new Range(0, 50),
                                new Range(0, 8),
                                "With the scenario's own inner joint.")
                        .orElse(0));
        all.add(
                Input.number(
                                "spare_joints_outer",
                                Grid.BOOK,
                                "Spare outer joints",
                                InputKind.COUNT,
                                new Range(0, 50),
                                new Range(0, 8),
                                "With the scenario's own outer joint.")
                        .orElse(0));
        all.add(
                Input.number(
                                "spare_boots_inner",
                                Grid.BOOK,
                                "Spare inner boot kits",
                                InputKind.COUNT,
                                new Range(0, 50),
                                new Range(0, 8),
                                "With the scenario's own inner boot.")
                        .orElse(0));
        all.add(
                Input.number(
                                "spare_boots_outer",
                                Grid.BOOK,
                                "Spare outer boot kits",
                                InputKind.COUNT,
                                new Range(0, 50),
                                new Range(0, 8),
                                "With the scenario's own outer boot.")
                        .orElse(0));
    }
}

package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;

/** What is measured on the finished shafts, and the log of their service; none must be given. */
public final class BuiltInputs {
    private static final Range LENGTH = new Range(0.01, 5_000);
    private static final Range PLAY = new Range(0, 500);
    private static final Range ANGLE = new Range(0, 89);

    private BuiltInputs() {}

    static void declare(List<Input> all) {
        all.add(
                Input.number(
                                "built_gauge",
                                Grid.BOOK,
                                "Angle gauge reads to",
                                InputKind.ANGLE,
                                new Range(0.01, 10),
                                new Range(0.05, 2),
                                "How far a reading of your angle gauge may be off, either way. Empty: 0.5.")
                        .orElse(0.5));
        all.add(
                Input.length(
                        "built_e",
                        Grid.AS_CUT,
                        "E as cut",
                        LENGTH,
                        new Range(150, 1_500),
                        "Overall length of the finished shaft on the shop card."));
        all.add(
                Input.length(
                        "built_k",
                        Grid.AS_CUT,
                        "K as cut",
                        LENGTH,
                        new Range(100, 1_500),
                        "Between the faces of the rings that the races bear on. Counts before E."));
        all.add(
                Input.length(
                        "built_play",
                        Grid.BUILT,
                        "End play",
                        PLAY,
                        new Range(0, 80),
                        "How far the assembled shaft floats by hand, boots loose, at this wheel position."));
        all.add(
                Input.number(
                        "built_angle_inner",
                        Grid.BUILT,
                        "Inner joint angle",
                        InputKind.ANGLE,
                        ANGLE,
                        new Range(0, 40),
                        "Between the shaft and the inner flange's axis."));
        all.add(
                Input.number(
                        "built_angle_outer",
                        Grid.BUILT,
                        "Outer joint angle",
                        InputKind.ANGLE,
                        ANGLE,
                        new Range(0, 40),
                        "Between the shaft and the stub axis."));
        service(all);
    }

    private static void service(List<Input> all) {
        all.add(text("service_date", "Date", "In any format."));
        all.add(
                Input.number(
                        "service_hours",
                        Grid.SERVICE,
                        "Hours",
                        InputKind.NUMBER,
                        new Range(0, 100_000),
                        new Range(0, 20_000),
                        "Running hours so far."));
        all.add(
                Input.words(
                        "service_boots",
                        Grid.SERVICE,
                        "Boots",
                        InputKind.CHOICE,
                        List.of("good", "worn", "torn", "replaced"),
                        "The worst of the four; replaced when new ones went on."));
        all.add(
                Input.words(
                        "service_grease",
                        Grid.SERVICE,
                        "Greased",
                        InputKind.CHOICE,
                        List.of("yes", "no"),
                        "Joints cleaned and packed anew."));
        all.add(
                Input.words(
                        "service_bolts",
                        Grid.SERVICE,
                        "Bolts torqued again",
                        InputKind.CHOICE,
                        List.of("yes", "no"),
                        "Due after the first run."));
        all.add(text("service_note", "Note", "Anything else."));
    }

    private static Input text(String name, String label, String meaning) {
        return Input.words(name, Grid.SERVICE, label, InputKind.TEXT, List.of(), meaning);
    }
}

package shaftwright.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shaftwright.contract.Input.Range;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.Member;
import shaftwright.travel.Restraint;

/** Inputs of dampers, straps, bump stops and of tubes near a boot, alike on both sides. */
public final class RestraintInputs {
    /** Word for the upright with all that is fast to it. */
    public static final String UPRIGHT = "upright";

    /** Word for what stays where it is. */
    public static final String FRAME = "frame";

    private static final Range PLACE = new Range(-20_000, 20_000);
    private static final Range AHEAD = new Range(-3_500, 3_500);
    private static final Range OUTWARD = new Range(0, 1_500);
    private static final Range SIZE = new Range(0.01, 5_000);
    private static final Range USUAL_LENGTH = new Range(25, 1_000);

    private RestraintInputs() {}

    static void declare(List<Input> all) {
        restraints(all);
        tubes(all);
    }

    private static void restraints(List<Input> all) {
        all.add(
                Input.words(
                        "restraint_name",
                        Grid.RESTRAINT,
                        "Damper, strap or bump stop",
                        InputKind.TEXT,
                        List.of(),
                        "Any name. One row serves both sides."));
        all.add(
                Input.words(
                        "restraint_kind",
                        Grid.RESTRAINT,
                        "Kind",
                        InputKind.CHOICE,
                        kinds(),
                        "damper: stops the wheel both ways. strap: only by its longest length. bump stop: only by its fully compressed length. Empty: damper."));
        all.add(
                Input.words(
                        "restraint_carried_by",
                        Grid.RESTRAINT,
                        "Moving end on",
                        InputKind.CHOICE,
                        carriers(false),
                        "What its moving end bolts to; an arm needs the linkage. Empty: the upright."));
        point(all, Grid.RESTRAINT, "restraint_fixed", "Frame end");
        point(all, Grid.RESTRAINT, "restraint_moving", "Moving end");
        all.add(
                Input.length(
                        "restraint_shortest",
                        Grid.RESTRAINT,
                        "Closed length",
                        SIZE,
                        USUAL_LENGTH,
                        "Between its ends when it can close no farther; with its bump rubber squeezed. Empty: not checked."));
        all.add(
                Input.length(
                        "restraint_longest",
                        Grid.RESTRAINT,
                        "Open length",
                        SIZE,
                        USUAL_LENGTH,
                        "Between its ends when it can open no farther, or the strap taut. Empty: not checked."));
    }

    private static void tubes(List<Input> all) {
        all.add(
                Input.words(
                        "tube_name",
                        Grid.TUBE,
                        "Tube near a boot",
                        InputKind.TEXT,
                        List.of(),
                        "Any name. One row serves both sides."));
        all.add(
                Input.words(
                        "tube_carried_by",
                        Grid.TUBE,
                        "Tube is part of",
                        InputKind.CHOICE,
                        carriers(true),
                        "What it moves with; an arm needs the linkage. Empty: the upright."));
        point(all, Grid.TUBE, "tube_first", "One end");
        point(all, Grid.TUBE, "tube_second", "Other end");
        all.add(
                Input.length(
                        "tube_diameter",
                        Grid.TUBE,
                        "Tube diameter",
                        SIZE,
                        new Range(5, 100),
                        "Outside diameter."));
    }

    private static void point(List<Input> all, Grid grid, String name, String label) {
        all.add(
                Input.length(
                        name + "_ahead",
                        grid,
                        label + " ahead of the mark",
                        PLACE,
                        AHEAD,
                        "At ride, from the mark that the points of the linkage share; negative when behind it."));
        all.add(
                Input.length(
                        name + "_out",
                        grid,
                        label + " from the centreline",
                        PLACE,
                        OUTWARD,
                        "At ride, sideways from the vehicle's centre plane."));
        all.add(
                Input.length(
                        name + "_height",
                        grid,
                        label + " height",
                        PLACE,
                        new Range(0, 2_000),
                        "At ride, from the same floor as all heights."));
    }

    private static List<String> kinds() {
        List<String> words = new ArrayList<>();
        for (Restraint.Kind kind : Restraint.Kind.values()) {
            words.add(kind.word());
        }
        return words;
    }

    /** Everything that a point may move with, in the order in which it is offered. */
    private static List<String> carriers(boolean frameToo) {
        List<String> words = new ArrayList<>();
        words.add(UPRIGHT);
        if (frameToo) {
            words.add(FRAME);
        }
        for (LinkageKind kind : LinkageKind.values()) {
            for (Member member : kind.members()) {
                if (!words.contains(member.name())) {
                    words.add(member.name());
                }
            }
        }
        return words;
    }

    /** Number from 1 of a chosen word, or of the first when the cell is empty. */
    public static int number(Input input, String text) {
        return text.isEmpty() ? 1 : input.place(text);
    }

    /** What a word stands for among the parts of a linkage. */
    public static String part(String carrier) {
        String word = carrier.toLowerCase(Locale.ROOT);
        if (word.isEmpty() || word.equals(UPRIGHT)) {
            return Linkage.HUB;
        }
        return word.equals(FRAME) ? Linkage.FRAME : word;
    }
}

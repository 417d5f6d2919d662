package shaftwright.filling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shaftwright.book.Area;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Input;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;

/**
 * How old a workbook is, and what it lacks for that.
 *
 * @param version contract version by which it was made
 * @param problem what came later, in one line; empty when nothing did
 */
public record BookAge(int version, Optional<Problem> problem) {
    /** Of a workbook as this program makes it. */
    public static final BookAge CURRENT = new BookAge(Contract.VERSION, Optional.empty());

    private static final int FEW = 3;

    /**
     * Of a workbook.
     *
     * @param version contract version by which it was made
     * @param names its defined names
     */
    public static BookAge of(int version, Map<String, Area> names) {
        if (version == Contract.VERSION) {
            return CURRENT;
        }
        List<String> inputs = new ArrayList<>();
        for (Input input : Contract.inputs()) {
            if (input.since() > version && !names.containsKey(input.definedName(Side.LEFT))) {
                inputs.add(input.name());
            }
        }
        List<String> figures = new ArrayList<>();
        List<String> revised = new ArrayList<>();
        for (LiveLine line : LiveLines.all().lines()) {
            boolean missing = !names.containsKey(line.definedName(Side.LEFT));
            if (line.since() > version && missing && !line.section().isWorking()) {
                figures.add(line.name());
            } else if (line.since() <= version && line.revised() > version) {
                revised.add(line.name());
            }
        }
        return new BookAge(version, problem(version, inputs, figures, revised));
    }

    private static Optional<Problem> problem(
            int version, List<String> inputs, List<String> figures, List<String> revised) {
        if (inputs.isEmpty() && figures.isEmpty() && revised.isEmpty()) {
            return Optional.empty();
        }
        StringBuilder found = new StringBuilder("contract version " + version);
        if (!inputs.isEmpty() || !figures.isEmpty()) {
            found.append(", which lacks ").append(counted(inputs, "input"));
            found.append(inputs.isEmpty() || figures.isEmpty() ? "" : " and ");
            found.append(counted(figures, "figure")).append(" that came later");
        }
        if (!revised.isEmpty()) {
            found.append("; ")
                    .append(counted(revised, "formula"))
                    .append(revised.size() == 1 ? " computes" : " compute")
                    .append(" as that version did, so a recalculation shows older figures, and")
                    .append(" stamps may stay out of date after a fill");
        }
        return Optional.of(
                new Problem(
                        Problem.Severity.WARNING,
                        Optional.empty(),
                        "the workbook",
                        found.toString(),
                        "version "
                                + Contract.VERSION
                                + "; the command renew makes a current workbook of it"));
    }

    /** {@code 5 inputs (a, b, c …)}; nothing for none. */
    private static String counted(List<String> names, String word) {
        if (names.isEmpty()) {
            return "";
        }
        boolean few = names.size() <= FEW;
        return names.size()
                + " "
                + word
                + (names.size() == 1 ? "" : "s")
                + " ("
                + String.join(", ", few ? names : names.subList(0, FEW))
                + (few ? ")" : " …)");
    }
}

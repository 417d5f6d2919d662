package shaftwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shaftwright.workbook.live.LiveLine;
import shaftwright.workbook.live.LiveLines;

/** What came after a workbook of an earlier contract version was made, said in one line. */
final class OlderBook {
    private static final int FEW = 3;

    private final int version;
    private final List<String> inputs = new ArrayList<>();
    private final List<String> figures = new ArrayList<>();
    private final List<String> revised = new ArrayList<>();

    /**
     * A workbook.
     *
     * @param version contract version by which it was made
     * @param names its defined names
     */
    OlderBook(int version, Map<String, Area> names) {
        this.version = version;
        for (Input input : Contract.inputs()) {
            if (input.since() > version && !names.containsKey(input.definedName(Side.LEFT))) {
                inputs.add(input.name());
            }
        }
        for (LiveLine line : LiveLines.all().lines()) {
            boolean missing = !names.containsKey(line.definedName(Side.LEFT));
            if (line.since() > version && missing && !line.section().isWorking()) {
                figures.add(line.name());
            } else if (line.since() <= version && line.revised() > version) {
                revised.add(line.name());
            }
        }
    }

    /** Nothing is said of a workbook that lacks nothing. */
    void sayTo(List<Problem> problems) {
        if (inputs.isEmpty() && figures.isEmpty() && revised.isEmpty()) {
            return;
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
                    .append(" as that version did, so a recalculation shows its figures");
        }
        problems.add(
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

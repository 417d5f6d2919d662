package shaftwright.live;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every live quantity of a workbook, in the order in which they are laid out. */
public final class LiveLines {
    private static final LiveLines ALL = declare();

    private final Map<String, LiveLine> byName = new LinkedHashMap<>();

    private LiveLines() {}

    /** The one list. */
    public static LiveLines all() {
        return ALL;
    }

    private static LiveLines declare() {
        LiveLines lines = new LiveLines();
        BookLines.declare(lines);
        PartLines.declare(lines);
        SplineLines.declare(lines);
        LimitLines.declare(lines);
        ScenarioLines.declare(lines);
        PathLines.declare(lines);
        OwnPointLines.declare(lines);
        KingpinLines.declare(lines);
        SideLines.declare(lines);
        RimLines.declare(lines);
        PositionLines.declare(lines);
        MockUpLines.declare(lines);
        BlankLines.declare(lines);
        WindowLines.declare(lines);
        PlanLines.declare(lines);
        RestraintLines.declare(lines);
        TravelLines.declare(lines);
        FurtherReadingLines.declare(lines);
        RestraintLines.declareCourses(lines);
        StopLines.declare(lines);
        RowNameLines.declare(lines);
        VariantPrintLines.declare(lines);
        StrengthBookLines.declare(lines);
        DoubtLines.declare(lines);
        RatedLines.declare(lines);
        TorqueLines.declare(lines);
        ShaftStrengthLines.declare(lines);
        FatigueLines.declare(lines);
        ChanceLines.declare(lines);
        StateLines.declare(lines);
        TravelLines.declareLongest(lines);
        TravelLines.declareAlone(lines);
        MatingLines.declare(lines);
        BootLines.declare(lines);
        VerdictLines.declare(lines);
        ResultLines.declare(lines);
        FractionLines.declare(lines);
        VehicleLines.declare(lines);
        TableLines.declare(lines);
        ChartLines.declare(lines);
        CardLines.declare(lines);
        ChartLines.declareBand(lines);
        GuideLines.declare(lines);
        ShaftDrawingLines.declare(lines);
        ViewFrameLines.declare(lines);
        DerivationLines.declare(lines);
        ListedLines.declare(lines);
        BuiltLines.declare(lines);
        MisreadLines.declare(lines);
        StartLines.declare(lines);
        OptionalSheetLines.declare(lines);
        NextStepLines.declare(lines);
        // Last, as their figures take longest: another thread may still be at it.
        VariantLines.declare(lines);
        return lines;
    }

    void add(LiveLine line) {
        if (byName.putIfAbsent(line.name(), line) != null) {
            throw new IllegalStateException("two live lines are called " + line.name());
        }
    }

    /** All of them. */
    public Collection<LiveLine> lines() {
        return byName.values();
    }

    /** Those of one section. */
    public List<LiveLine> in(Section section) {
        List<LiveLine> found = new ArrayList<>();
        for (LiveLine line : byName.values()) {
            if (line.section() == section) {
                found.add(line);
            }
        }
        return found;
    }

    /**
     * The line of this name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public LiveLine line(String name) {
        LiveLine line = byName.get(name);
        if (line == null) {
            throw new IllegalArgumentException("no live line is called \"" + name + "\"");
        }
        return line;
    }

    /** Whether a line of this name exists. */
    public boolean has(String name) {
        return byName.containsKey(name);
    }
}

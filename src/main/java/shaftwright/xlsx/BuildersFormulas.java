package shaftwright.xlsx;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Followed;

/**
 * The formulas of one file that are not the workbook's own: which depend on changed cells, and what
 * they show then.
 */
final class BuildersFormulas implements FormulaBook {
    private final List<String> sheetNames;
    private final List<DefinedName> names;
    private final Sheets sheets;
    private final FormulaSources sources;

    private final FormulaGraph graph = new FormulaGraph();

    /** Cells of what-if tables. */
    private final Set<CellPlace> tables = new HashSet<>();

    /** By sheet, formulas that give values to several cells. */
    private final Map<String, List<StoredFormula>> blocks = new HashMap<>();

    /**
     * Formulas of a file; none is looked at yet.
     *
     * @param tables areas of tables by lower-case name
     */
    BuildersFormulas(WorkbookPart workbook, Sheets sheets, Map<String, Area> tables) {
        this.sheetNames = List.copyOf(workbook.relationIds().keySet());
        this.names = workbook.definitions();
        this.sheets = sheets;
        this.sources = new FormulaSources(sheetNames, names, tables);
    }

    @Override
    public List<String> sheets() {
        return sheetNames;
    }

    @Override
    public List<DefinedName> names() {
        return names;
    }

    @Override
    public CellValue value(CellPlace place) {
        SheetPart part = sheets.get(place.sheet());
        int cell = part.find(place.row(), place.column());
        return cell < 0 ? CellValue.BLANK : part.value(cell);
    }

    @Override
    public Optional<StoredFormula> formula(CellPlace place) {
        SheetPart part = sheets.get(place.sheet());
        int cell = part.find(place.row(), place.column());
        return cell >= 0 && part.hasFormula(cell)
                ? Optional.of(part.stored(cell))
                : blocks(place.sheet()).stream()
                        .filter(formula -> formula.block().contains(place))
                        .findFirst();
    }

    private List<StoredFormula> blocks(String sheet) {
        return blocks.computeIfAbsent(sheet, name -> sheets.get(name).blocks());
    }

    @Override
    public int lastRow(String sheet) {
        return sheets.get(sheet).lastRow();
    }

    /**
     * New values of all formula cells that depend on changed cells.
     *
     * @param changes new values of changed cells
     * @param written what was written
     * @param ours every cell that was written: its formula and value are the workbook's own
     * @return by cell the new value, or empty where it is not known
     */
    Map<CellPlace, Optional<CellValue>> dependents(
            Map<CellPlace, CellValue> changes,
            Written written,
            Set<CellPlace> ours,
            DependentFormulas evaluator) {
        for (String sheet : sheets.withFormulas()) {
            add(sheet, written.cells(sheet));
        }
        Set<CellPlace> reached = reached(changes.keySet(), ours);
        reached.removeAll(ours);
        return reached.isEmpty() ? Map.of() : evaluator.values(this, reached, changes, Set.of());
    }

    /** Takes all formula cells of a sheet in, except for some. */
    private void add(String sheet, BitSet exceptions) {
        SheetPart part = sheets.get(sheet);
        for (int cell = exceptions.nextClearBit(0);
                cell < part.cellCount();
                cell = exceptions.nextClearBit(cell + 1)) {
            if (part.hasFormula(cell)) {
                add(part.place(cell), part.stored(cell), part);
            }
        }
    }

    private void add(CellPlace place, StoredFormula formula, SheetPart part) {
        boolean table = formula.kind() == StoredFormula.Kind.WHAT_IF_TABLE;
        if (table) {
            tables.add(place);
        }
        if (!formula.block().equals(one(place))) {
            for (int cell : part.within(formula.block())) {
                CellPlace member = part.place(cell);
                graph.addReading(member, one(place));
                if (table) {
                    tables.add(member);
                }
            }
        }
        sources.tell(
                place,
                formula,
                new FormulaSources.Reads() {
                    @Override
                    public void area(Area area) {
                        graph.addReading(place, area);
                    }

                    @Override
                    public void anything() {
                        graph.addReadingAnything(place);
                    }
                });
    }

    private static Area one(CellPlace place) {
        return new Area(place.sheet(), place.row(), place.column(), place.row(), place.column());
    }

    /**
     * A what-if table runs our cells with other inputs: it changes though what it reads may not.
     */
    private Set<CellPlace> reached(Collection<CellPlace> changed, Collection<CellPlace> ours) {
        Set<CellPlace> reached = graph.readersOf(changed);
        if (!tables.isEmpty() && !changed.isEmpty()) {
            Set<CellPlace> run = graph.readersOf(ours);
            run.retainAll(tables);
            reached.addAll(run);
            reached.addAll(graph.readersOf(run));
        }
        return reached;
    }

    /**
     * What some formula cells show when other cells have changed.
     *
     * @param cells the formula cells that are asked for
     * @param changes new values of changed cells
     * @param results areas whose cells stand for their values, whatever formulas they hold
     * @param evaluatorOrNull without one nothing is computed
     */
    Followed follow(
            Collection<CellPlace> cells,
            Map<CellPlace, CellValue> changes,
            Collection<Area> results,
            DependentFormulas evaluatorOrNull) {
        Sources read = new Sources(results);
        read.addAll(cells);
        Set<CellPlace> seeds = new LinkedHashSet<>(changes.keySet());
        seeds.addAll(read.unvalued);
        Set<CellPlace> reached = graph.readersOf(seeds);
        if (!changes.isEmpty()) {
            reached.addAll(tables);
            reached.addAll(graph.readersOf(tables));
        }
        reached.addAll(read.unvalued);
        Set<CellPlace> asked = new LinkedHashSet<>(cells);
        asked.retainAll(reached);
        Map<CellPlace, CellValue> known = new LinkedHashMap<>();
        if (!asked.isEmpty() && evaluatorOrNull != null) {
            evaluatorOrNull
                    .values(this, reached, changes, read.unvalued)
                    .forEach((place, value) -> value.ifPresent(v -> known.put(place, v)));
        }
        known.keySet().retainAll(asked);
        asked.removeAll(known.keySet());
        return new Followed(known, asked, read.results());
    }

    /** All formula cells that some depend on, taken in on the way. */
    private final class Sources implements FormulaSources.Reads {
        private final Collection<Area> ours;
        private final Set<CellPlace> known = new HashSet<>();
        private final Set<CellPlace> unvalued = new LinkedHashSet<>();
        private final Set<Area> results = new LinkedHashSet<>();
        private final ArrayDeque<CellPlace> open = new ArrayDeque<>();
        private boolean anything;

        Sources(Collection<Area> ours) {
            this.ours = ours;
        }

        /** Those of our areas that are read. */
        Collection<Area> results() {
            return anything ? ours : results;
        }

        void addAll(Collection<CellPlace> cells) {
            for (CellPlace place : cells) {
                add(place);
            }
            while (!open.isEmpty()) {
                CellPlace place = open.remove();
                SheetPart part = sheets.get(place.sheet());
                StoredFormula formula = part.stored(part.find(place.row(), place.column()));
                BuildersFormulas.this.add(place, formula, part);
                sources.tell(place, formula, this);
                if (value(place) instanceof CellValue.Blank) {
                    unvalued.add(place);
                }
            }
        }

        private void add(CellPlace place) {
            if (known.add(place)) {
                open.add(place);
            }
        }

        @Override
        public void anything() {
            anything = true;
        }

        @Override
        public void area(Area area) {
            if (!sheets.has(area.sheet())) {
                return;
            }
            for (Area our : ours) {
                if (our.meets(area)) {
                    results.add(our);
                }
            }
            SheetPart part = sheets.get(area.sheet());
            for (StoredFormula block : blocks(area.sheet())) {
                if (block.block().meets(area)) {
                    add(block.home());
                }
            }
            for (int cell : part.within(area)) {
                CellPlace place = part.place(cell);
                if (part.hasFormula(cell) && !isOurs(place)) {
                    add(place);
                }
            }
        }

        private boolean isOurs(CellPlace place) {
            for (Area our : results) {
                if (our.contains(place)) {
                    return true;
                }
            }
            return false;
        }
    }
}

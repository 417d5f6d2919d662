package shaftwright.xlsx;

import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import shaftwright.book.Area;

/**
 * The sheets of one file that hold cells. Each is inflated and walked once, when something of it is
 * asked for; of others no more is looked at than has to be, as a builder's own may be large.
 */
final class Sheets {
    private final String title;
    private final ZipSnapshot zip;

    /** By the sheet's name, in tab order. */
    private final Map<String, ZipEntryRecord> entries;

    private final SharedStrings texts;
    private final Map<String, SheetPart> walked = new HashMap<>();

    /** Whether sheets that were not walked have formulas, once that was asked. */
    private final Map<String, Boolean> scans = new HashMap<>();

    Sheets(
            String title,
            ZipSnapshot zip,
            Map<String, ZipEntryRecord> entries,
            SharedStrings texts) {
        this.title = title;
        this.zip = zip;
        this.entries = entries;
        this.texts = texts;
    }

    /** Those that were walked so far. */
    Set<String> walked() {
        return Set.copyOf(walked.keySet());
    }

    /** Their parts, in tab order. */
    Collection<ZipEntryRecord> entries() {
        return entries.values();
    }

    /** Names of the parts of those that were walked so far. */
    Set<String> walkedParts() {
        Set<String> parts = new HashSet<>();
        for (String sheet : walked.keySet()) {
            parts.add(entries.get(sheet).name());
        }
        return parts;
    }

    /**
     * Where a sheet's part stands in the file.
     *
     * @throws UnreadableBookException if there is no such sheet
     */
    ZipEntryRecord entry(String sheet) {
        ZipEntryRecord entry = entries.get(sheet);
        if (entry == null) {
            throw new UnreadableBookException(
                    title, "no sheet with cells named \"" + sheet + "\"", "one");
        }
        return entry;
    }

    /**
     * The sheet of this name, walked.
     *
     * @throws UnreadableBookException if there is none, or its part is damaged
     */
    SheetPart get(String name) {
        SheetPart part = walked.get(name);
        if (part == null) {
            part = walk(name);
            walked.put(name, part);
        }
        return part;
    }

    /**
     * The sheet of this name, walked and not kept.
     *
     * @throws UnreadableBookException if there is none, or its part is damaged
     */
    SheetPart walk(String name) {
        return SheetPart.read(name, zip.text(entry(name)), texts);
    }

    /** Those that were walked so far. */
    List<SheetPart> parts() {
        return List.copyOf(walked.values());
    }

    private boolean hasFormula(String sheet) {
        return walked.containsKey(sheet)
                || scans.computeIfAbsent(
                        sheet, name -> FormulaScan.hasFormula(title, zip, entry(name)));
    }

    /** All in tab order. */
    Set<String> names() {
        return entries.keySet();
    }

    /** Whether there is a sheet with cells of this name. */
    boolean has(String sheet) {
        return entries.containsKey(sheet);
    }

    /** Sheets that were walked, and others that have formulas, in tab order. */
    List<String> withFormulas() {
        return entries.keySet().stream().filter(this::hasFormula).toList();
    }

    /** Whether any cell outside some areas has a formula. */
    boolean haveFormulasOutside(Collection<Area> areas) {
        Map<String, BitSet> known = new HashMap<>();
        for (Area area : areas) {
            BitSet cells = known.computeIfAbsent(area.sheet(), sheet -> new BitSet());
            for (int cell : get(area.sheet()).within(area)) {
                cells.set(cell);
            }
        }
        return haveFormulasOutside(sheet -> known.getOrDefault(sheet, new BitSet()));
    }

    /** Whether any cell that was not written has a formula. */
    boolean haveFormulasOutside(Written written) {
        return haveFormulasOutside(written::cells);
    }

    private boolean haveFormulasOutside(Function<String, BitSet> known) {
        for (String sheet : entries.keySet()) {
            SheetPart part = walked.get(sheet);
            boolean found =
                    part == null ? hasFormula(sheet) : part.hasFormulaOutside(known.apply(sheet));
            if (found) {
                return true;
            }
        }
        return false;
    }

    /**
     * Sheets with formulas in whose text a name occurs, see {@link PartText#hasNameAfter}. Most
     * have none, and a book may have a hundred thousand formulas.
     */
    List<String> naming(String lowerCase) {
        return withFormulas().stream()
                .filter(sheet -> text(sheet).hasNameAfter(lowerCase))
                .toList();
    }

    private PartText text(String sheet) {
        SheetPart part = walked.get(sheet);
        return part == null ? zip.text(entry(sheet)) : part.part();
    }
}

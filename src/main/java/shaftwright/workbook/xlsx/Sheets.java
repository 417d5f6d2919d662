package shaftwright.workbook.xlsx;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Function;
import shaftwright.book.Area;
import shaftwright.workbook.Ahead;

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
    private final Map<String, Ahead<SheetPart>> walked = new HashMap<>();

    /** Whether sheets that were not walked have formulas, once that was asked. */
    private final Map<String, Ahead<Boolean>> scans = new HashMap<>();

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

    /** Those that were walked so far, or are to be. */
    Set<String> walked() {
        return new HashSet<>(walked.keySet());
    }

    /** Their parts, in tab order. */
    Collection<ZipEntryRecord> entries() {
        return entries.values();
    }

    /** Names of the parts of those that were walked so far, or are to be. */
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
     * Begins to walk these sheets, each once, in a thread of its own; whoever asks for one joins
     * in.
     *
     * @throws UnreadableBookException if one does not exist; that its part is damaged is met when
     *     it is asked for
     */
    Map<String, Ahead<SheetPart>> begin(Collection<String> names) {
        List<Walk> walks = new ArrayList<>();
        for (String name : names) {
            if (!walked.containsKey(name)) {
                walks.add(new Walk(name));
            }
        }
        Collections.sort(walks);
        List<Ahead<SheetPart>> begun = new ArrayList<>();
        for (Walk walk : walks) {
            Ahead<SheetPart> part = Ahead.of(walk);
            begun.add(part);
            walked.put(walk.sheet, part);
        }
        if (!begun.isEmpty()) {
            Ahead.inTurn("sheets", begun);
        }
        Map<String, Ahead<SheetPart>> parts = new HashMap<>();
        for (String name : names) {
            parts.put(name, walked.get(name));
        }
        return parts;
    }

    /** Joins in walking all that were begun, and waits for the last. */
    void finish() {
        Ahead.finish(List.copyOf(walked.values()));
    }

    /** The sheet of this name, walked. */
    SheetPart get(String name) {
        Ahead<SheetPart> part = walked.get(name);
        if (part == null) {
            part = Ahead.of(new Walk(name));
            walked.put(name, part);
        }
        return part.get();
    }

    /** Those that were walked so far. */
    List<SheetPart> parts() {
        List<SheetPart> parts = new ArrayList<>();
        for (Ahead<SheetPart> part : walked.values()) {
            parts.add(part.get());
        }
        return parts;
    }

    private final class Walk implements Callable<SheetPart>, Comparable<Walk> {
        private final String sheet;
        private final ZipEntryRecord entry;

        Walk(String sheet) {
            this.sheet = sheet;
            this.entry = entry(sheet);
        }

        @Override
        public SheetPart call() {
            return SheetPart.read(sheet, zip.text(entry), texts);
        }

        /** Largest first, so that all threads finish at about the same time. */
        @Override
        public int compareTo(Walk other) {
            return Integer.compare(other.entry.size(), entry.size());
        }
    }

    /** Begins to look for formulas in all sheets that were not walked, as a save will ask. */
    void scanOthers() {
        List<Ahead<Boolean>> others = new ArrayList<>();
        for (String sheet : entries.keySet()) {
            if (!walked.containsKey(sheet)) {
                others.add(scan(sheet));
            }
        }
        if (!others.isEmpty()) {
            Ahead.inTurn("other sheets", others);
        }
    }

    private Ahead<Boolean> scan(String sheet) {
        Ahead<Boolean> scan = scans.get(sheet);
        if (scan == null) {
            ZipEntryRecord entry = entry(sheet);
            scan =
                    Ahead.of(
                            new Callable<Boolean>() {
                                @Override
                                public Boolean call() {
                                    return FormulaScan.hasFormula(title, zip, entry);
                                }
                            });
            scans.put(sheet, scan);
        }
        return scan;
    }

    /** All in tab order. */
    Set<String> names() {
        return entries.keySet();
    }

    /** Whether there is a sheet with cells of this name. */
    boolean has(String sheet) {
        return entries.containsKey(sheet);
    }

    /** Sheets that were walked, and others that have formulas. */
    List<String> withFormulas() {
        List<String> found = new ArrayList<>();
        for (String sheet : entries.keySet()) {
            if (walked.containsKey(sheet) || scan(sheet).get()) {
                found.add(sheet);
            }
        }
        return found;
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
            Ahead<SheetPart> part = walked.get(sheet);
            boolean found =
                    part == null
                            ? scan(sheet).get()
                            : part.get().hasFormulaOutside(known.apply(sheet));
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
        Map<String, Ahead<Boolean>> looks = new LinkedHashMap<>();
        for (String sheet : entries.keySet()) {
            looks.put(sheet, Ahead.of(new Look(sheet, lowerCase)));
        }
        Ahead.twoAtOnce(List.copyOf(looks.values()));
        List<String> naming = new ArrayList<>();
        for (Map.Entry<String, Ahead<Boolean>> look : looks.entrySet()) {
            if (look.getValue().get()) {
                naming.add(look.getKey());
            }
        }
        return naming;
    }

    /** Looks for a name in a sheet's text. */
    private final class Look implements Callable<Boolean> {
        private final ZipEntryRecord entry;
        private final String lowerCase;

        /** One of the two, whether the sheet was walked or not. */
        private final Ahead<SheetPart> partOrNull;

        private final Ahead<Boolean> scanOrNull;

        Look(String sheet, String lowerCase) {
            this.entry = entry(sheet);
            this.lowerCase = lowerCase;
            partOrNull = walked.get(sheet);
            scanOrNull = partOrNull == null ? scan(sheet) : null;
        }

        @Override
        public Boolean call() {
            if (scanOrNull != null && !scanOrNull.get()) {
                return false;
            }
            PartText text = partOrNull == null ? zip.text(entry) : partOrNull.get().part();
            return text.hasNameAfter(lowerCase);
        }
    }
}

package shaftwright.xlsx;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.CellWrite;
import shaftwright.book.Cells;
import shaftwright.book.Followed;
import shaftwright.book.OpenBook;

/**
 * An .xlsx (or .xlsm, .xltx, .xltm) file as an open book.
 *
 * <p>The file is read once into memory, compressed as it is; sheets are inflated only when cells of
 * them are asked for. Saving writes the same package with the values of the written cells replaced
 * and every other byte copied: formulas, styles, notes, images, pivot tables, macros (kept, never
 * run) and parts that nobody here knows. Cached points of charts that show written cells follow.
 *
 * <p>Not for use by several threads at once.
 */
public final class XlsxBook implements OpenBook {
    private static final int LAST_ROW = (1 << 20) - 1;
    private static final int LAST_COLUMN = (1 << 14) - 1;

    private final Path file;
    private final String title;
    private final ZipSnapshot zip;
    private final FileState read;
    private final Relationships links;
    private final WorkbookPart workbook;
    private final Sheets sheets;
    private final DependentFormulas formulasOrNull;

    private final Written written;

    /** Where the workbook part has the bytes of the known one, if any, it is not walked again. */
    private XlsxBook(
            Path file, FileState read, WorkbookPart knownOrNull, DependentFormulas formulasOrNull) {
        this.file = file;
        this.title = file.getFileName().toString();
        this.read = read;
        this.formulasOrNull = formulasOrNull;
        this.zip = ZipSnapshot.of(title, read.content().orElseThrow());
        String main = mainPart();
        PartText text = zip.text(zip.find(main));
        boolean known =
                knownOrNull != null && Arrays.equals(knownOrNull.text().bytes(), text.bytes());
        this.workbook = known ? knownOrNull : WorkbookPart.read(title, text);
        this.links = Relationships.of(title, zip, main);
        String shared = links.first("sharedStrings");
        ZipEntryRecord entry = shared == null ? null : zip.find(shared);
        SharedStrings texts = new SharedStrings(title, entry == null ? null : zip.text(entry));
        this.sheets = new Sheets(title, zip, sheetEntries(), texts);
        this.written = new Written(sheets);
    }

    /**
     * Opens a workbook file.
     *
     * @throws UnreadableBookException if it is missing, or no .xlsx workbook, or damaged
     */
    public static XlsxBook open(Path file) {
        return open(file, null, null);
    }

    /**
     * Opens a workbook file.
     *
     * @param formulas asked for new values of the builder's own formulas, if the workbook has any
     *     that depend on what changes
     * @throws UnreadableBookException if it is missing, or no .xlsx workbook, or damaged
     */
    public static XlsxBook open(Path file, DependentFormulas formulas) {
        return open(file, null, formulas);
    }

    private static XlsxBook open(
            Path file, WorkbookPart knownOrNull, DependentFormulas formulasOrNull) {
        String title = file.getFileName().toString();
        try {
            if (Files.isDirectory(file)) {
                throw new UnreadableBookException(title, "a folder", ZipSnapshot.A_WORKBOOK);
            }
            return new XlsxBook(file, FileState.read(file), knownOrNull, formulasOrNull);
        } catch (NoSuchFileException e) {
            throw UnreadableBookException.notFound(title, e);
        } catch (IOException e) {
            throw new UnreadableBookException(
                    title,
                    "a file that cannot be read (" + e.getMessage() + ")",
                    "a file that can be read",
                    e);
        }
    }

    private String mainPart() {
        String main = Relationships.of(title, zip, "").first("officeDocument");
        if (main != null && zip.find(main) != null) {
            if (main.endsWith(".bin")) {
                throw new UnreadableBookException(
                        title, "a binary workbook (.xlsb)", ZipSnapshot.A_WORKBOOK);
            }
            return main;
        }
        boolean openDocument = zip.find("mimetype") != null && zip.find("content.xml") != null;
        throw new UnreadableBookException(
                title,
                openDocument ? "an OpenDocument file (.ods)" : "a zip archive without a workbook",
                ZipSnapshot.A_WORKBOOK);
    }

    /** Parts of the sheets that hold cells, by sheet name. */
    private Map<String, ZipEntryRecord> sheetEntries() {
        Map<String, ZipEntryRecord> entries = new LinkedHashMap<>();
        for (Map.Entry<String, String> sheet : workbook.relationIds().entrySet()) {
            Relationships.Link link = links.byId(sheet.getValue());
            if (link == null || zip.find(link.target()) == null) {
                throw new UnreadableBookException(
                        title, "no part for sheet \"" + sheet.getKey() + "\"", "one");
            }
            if (link.isA("worksheet")) {
                entries.put(sheet.getKey(), zip.find(link.target()));
            }
        }
        return entries;
    }

    static String lowerCase(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    @Override
    public String title() {
        return title;
    }

    /**
     * Checks what reading cells does not look at: that all parts have the checksums that the file
     * says, and that no part which every program needs is missing or cut off. Saving checks it,
     * too.
     *
     * @throws UnreadableBookException naming the part that is missing or damaged
     */
    public void refuseDamaged() {
        new PackageCheck(title, zip, links)
                .refuseDamaged(workbook.text().part(), sheets.entries(), sheets.walkedParts());
    }

    @Override
    public Map<String, Area> names() {
        return Collections.unmodifiableMap(workbook.names());
    }

    /** Lower-case names that are still defined but whose cells were deleted. */
    public Set<String> deletedNames() {
        return Collections.unmodifiableSet(workbook.deletedNames());
    }

    /** All sheets' names in tab order, chart sheets included. */
    public List<String> sheetNames() {
        return List.copyOf(workbook.relationIds().keySet());
    }

    /**
     * What the file brings along that could do something by itself when it is opened, in a
     * builder's words: macros, links to other files, data connections.
     */
    public List<String> activeParts() {
        int links = 0;
        boolean macros = false;
        boolean connections = false;
        for (ZipEntryRecord entry : zip.entries()) {
            String name = lowerCase(entry.name());
            macros |= name.endsWith("vbaproject.bin") || name.contains("/macrosheets/");
            connections |= name.endsWith("/connections.xml");
            links += name.contains("/externallinks/") && !name.contains("/_rels/") ? 1 : 0;
        }
        List<String> parts = new ArrayList<>();
        if (macros) {
            parts.add("macros");
        }
        if (links > 0) {
            parts.add(links == 1 ? "a link to another file" : links + " links to other files");
        }
        if (connections) {
            parts.add("data connections");
        }
        return parts;
    }

    /**
     * What every workbook of this tool has and this one has no more, in a builder's words, such as
     * {@code charts}: a program that does not keep them saved it. Asked when typed and live cells
     * were read.
     */
    public List<String> lostParts() {
        return LostParts.of(zip, ContentTypes.of(zip), sheets.parts());
    }

    /**
     * {@inheritDoc}
     *
     * <p>That a cell holds something impossible is met when it is asked for.
     *
     * @throws UnreadableBookException if a sheet does not exist, or its part is damaged
     */
    @Override
    public Cells read(Collection<Area> areas) {
        Map<String, SheetPart> parts = new HashMap<>();
        for (Area area : areas) {
            parts.computeIfAbsent(area.sheet(), sheets::get);
        }
        return new ReadCells(List.copyOf(areas), parts);
    }

    /**
     * {@inheritDoc} Of values written to one cell the last counts.
     *
     * @throws UnreadableBookException if a sheet does not exist
     */
    @Override
    public void write(List<CellWrite> writes) {
        written.add(writes);
    }

    /**
     * Saves the written values. Nothing is written when the file already holds them all. A file
     * that is replaced is kept beside the new one as {@code name.backup.xlsx} until the next save.
     * To go on afterwards, open the file again: this book still stands for what was read. Formulas
     * of the builder's that depend on changed cells get new values, or lose theirs; in a book that
     * was opened without somebody to compute them they keep what they show.
     *
     * @param target the file to write, usually the one that was opened
     * @return what was done
     * @throws BookNotWritableException if the target is open elsewhere, has changed since it was
     *     read, is signed, or cannot be replaced; it is then left as it was
     */
    public SaveReport save(Path target) {
        return saveOver(target, this);
    }

    /**
     * Saves the written values as {@link #save(Path)} does, where another book's file may stand: it
     * is replaced only if it is still what it was when that book was opened.
     *
     * @param earlier the book that this one was made of
     * @throws BookNotWritableException as {@link #save(Path)} does
     */
    public SaveReport saveOver(Path target, XlsxBook earlier) {
        earlier.refuseUnfit(target);
        refuseDamaged();
        if (earlier != this && earlier.isSource(target)) {
            // Its backup may be the last whole copy.
            earlier.refuseDamaged();
        }
        Map<CellPlace, CellValue> changes = new HashMap<>(written.changed());
        int changed = changes.size();
        if (changed == 0 && isSource(target)) {
            SafeReplace.tidy(target);
            return new SaveReport(0, 0, List.of(), Replaced.NOTHING);
        }
        refuseSigned(target);
        Map<CellPlace, Optional<CellValue>> dependents = dependents();
        List<CellPlace> dropped = new ArrayList<>();
        for (Map.Entry<CellPlace, Optional<CellValue>> cell : dependents.entrySet()) {
            changes.put(cell.getKey(), cell.getValue().orElse(CellValue.BLANK));
            if (cell.getValue().isEmpty()) {
                dropped.add(cell.getKey());
            }
        }
        Map<String, Deflated> parts = patches(changes, !dropped.isEmpty());
        Replaced replaced =
                SafeReplace.replace(
                        target,
                        earlier.expected(target),
                        out -> zip.writeTo(out, parts),
                        file -> readBack(target, file, changes));
        return new SaveReport(changed, dependents.size() - dropped.size(), dropped, replaced);
    }

    /** New values of the builder's own formulas; empty of one whose value is to be dropped. */
    private Map<CellPlace, Optional<CellValue>> dependents() {
        return formulasOrNull == null
                        || written.changed().isEmpty()
                        || !sheets.haveFormulasOutside(written)
                ? Map.of()
                : buildersFormulas()
                        .dependents(written.changed(), written, written.places(), formulasOrNull);
    }

    /** Whether any cell outside some areas has a formula. */
    public boolean hasFormulasOutside(Collection<Area> areas) {
        return sheets.haveFormulasOutside(areas);
    }

    /**
     * Cells of the builder's own formulas that would lose their values if the written values were
     * saved now.
     */
    public List<CellPlace> losing() {
        List<CellPlace> losing = new ArrayList<>();
        dependents()
                .forEach(
                        (place, value) -> {
                            if (value.isEmpty()) {
                                losing.add(place);
                            }
                        });
        return losing;
    }

    @Override
    public Followed follow(
            Collection<CellPlace> cells,
            Map<CellPlace, CellValue> changes,
            Collection<Area> results) {
        return cells.isEmpty()
                ? Followed.UNCHANGED
                : buildersFormulas().follow(cells, changes, results, formulasOrNull);
    }

    private BuildersFormulas buildersFormulas() {
        return new BuildersFormulas(workbook, sheets, tables());
    }

    /** Where tables stand, by their lower-case names. */
    private Map<String, Area> tables() {
        Map<String, Area> tables = new HashMap<>();
        for (String sheet : sheets.names()) {
            addTables(sheet, tables);
        }
        return tables;
    }

    /** A table that cannot be read is left out: who reads it is taken to read anything. */
    private void addTables(String sheet, Map<String, Area> tables) {
        try {
            Relationships links = Relationships.of(title, zip, sheets.entry(sheet).name());
            for (Relationships.Link link : links.links()) {
                ZipEntryRecord entry = link.isA("table") ? zip.find(link.target()) : null;
                if (entry != null) {
                    TablePart table = TablePart.read(zip.text(entry));
                    Area area = AreaReference.on(sheet, table.reference());
                    if (area != null) {
                        tables.put(lowerCase(table.name()), area);
                    }
                }
            }
        } catch (UnreadableBookException e) {
            // Seen from the formulas, such a table is one that nobody knows.
        }
    }

    /**
     * Saves with other named formulas; nothing else changes, and written values are not saved.
     *
     * @return what became of the previous file
     * @throws BookNotWritableException as {@link #save(Path)} does
     * @throws UnreadableBookException if the builder has a name of his own that is to be put in
     */
    public Replaced saveNames(Path target, NamedFormulas names) {
        List<Splice> splices = names.splices(workbook);
        PartText text = workbook.text();
        return saveParts(
                target,
                splices.isEmpty() ? Map.of() : Map.of(text, splices),
                written -> {
                    if (open(written).isChangedBy(names)) {
                        throw new BookNotWritableException(
                                target, "reading back the named formulas gave others");
                    }
                });
    }

    /** Whether saving with other named formulas would change anything. */
    public boolean isChangedBy(NamedFormulas names) {
        return !names.splices(workbook).isEmpty();
    }

    /** Saves with changes to some parts; does nothing where there are none to make in the file. */
    private Replaced saveParts(
            Path target, Map<PartText, List<Splice>> changes, SafeReplace.Check check) {
        refuseUnfit(target);
        refuseDamaged();
        if (changes.isEmpty() && isSource(target)) {
            SafeReplace.tidy(target);
            return Replaced.NOTHING;
        }
        refuseSigned(target);
        Map<String, Deflated> parts = new HashMap<>();
        for (Map.Entry<PartText, List<Splice>> change : changes.entrySet()) {
            PartText text = change.getKey();
            parts.put(text.part(), Splice.apply(text, change.getValue(), text.bytes().length / 4));
        }
        return SafeReplace.replace(
                target,
                expected(target),
                out -> zip.writeTo(out, parts),
                written -> {
                    check.check(written);
                    refuseTorn(target, written);
                });
    }

    /** Whether each sheet is seen as a tab, in tab order. */
    public Map<String, Boolean> seenSheets() {
        return SheetTabs.of(workbook.text()).seen();
    }

    /**
     * Saves with some sheets shown and others hidden; nothing else changes but which tab is in
     * front, where that one is hidden. Written values are not saved.
     *
     * @param show names of sheets, capitals or not
     * @param hide names of others
     * @return what became of the previous file
     * @throws BookNotWritableException if the structure of the workbook is locked, if no sheet
     *     would be left to see, and as {@link #save(Path)} does
     * @throws NoSuchSheetException if there is no sheet of a name
     */
    public Replaced saveSeenSheets(Path target, Collection<String> show, Collection<String> hide) {
        SheetTabs tabs = SheetTabs.of(workbook.text());
        Set<String> shown = sheetsCalled(show);
        Set<String> hidden = sheetsCalled(hide);
        Map<PartText, List<Splice>> changes =
                tabs.changes(shown, hidden, sheet -> zip.text(part(sheet)));
        if (!changes.isEmpty() && tabs.isLocked()) {
            throw new BookNotWritableException(
                    target,
                    "the structure of the workbook is protected; lift that in your spreadsheet"
                            + " program first");
        }
        if (!tabs.leavesAny(shown, hidden)) {
            throw new BookNotWritableException(
                    target, "no sheet would be left to see; leave one of them out of --hide");
        }
        return saveParts(
                target,
                changes,
                written -> {
                    if (open(written).isChangedBy(show, hide)) {
                        throw new BookNotWritableException(
                                target, "reading it back gave other sheets to see");
                    }
                });
    }

    /**
     * Saves with no sheet saying what of it is printed: LibreOffice prints hidden sheets that do.
     *
     * @throws BookNotWritableException as {@link #save(Path)} does
     */
    public void saveWithoutPrintAreas(Path target) {
        PartText text = workbook.text();
        List<Splice> splices = PrintAreas.removed(text);
        saveParts(target, splices.isEmpty() ? Map.of() : Map.of(text, splices), XlsxBook::open);
    }

    private boolean isChangedBy(Collection<String> show, Collection<String> hide) {
        return !SheetTabs.of(workbook.text())
                .changes(sheetsCalled(show), sheetsCalled(hide), sheet -> zip.text(part(sheet)))
                .isEmpty();
    }

    /** Lower-case names of sheets that there are. */
    private Set<String> sheetsCalled(Collection<String> names) {
        Set<String> found = new HashSet<>();
        for (String name : names) {
            if (workbook.relationIds().keySet().stream()
                    .noneMatch(sheet -> lowerCase(sheet).equals(lowerCase(name)))) {
                throw new NoSuchSheetException(name, sheetNames());
            }
            found.add(lowerCase(name));
        }
        return found;
    }

    /** A sheet's part, whatever kind of sheet it is. */
    private ZipEntryRecord part(String sheet) {
        return zip.find(links.byId(workbook.relationIds().get(sheet)).target());
    }

    private AuthorTraces traces() {
        return AuthorTraces.in(title, zip, workbook.text().part());
    }

    /** How many names of authors the file holds, outside its cells and the words of its notes. */
    public int authors() {
        return traces().count();
    }

    /**
     * Saves without the names of authors; nothing else changes, and written values are not saved.
     *
     * @return what became of the previous file
     * @throws BookNotWritableException as {@link #save(Path)} does
     */
    public Replaced saveWithoutAuthors(Path target) {
        return saveParts(
                target,
                traces().found(),
                written -> {
                    if (open(written).authors() > 0) {
                        throw new BookNotWritableException(
                                target, "reading it back still gave names of authors");
                    }
                });
    }

    @Override
    public Map<CellPlace, String> formulasCalling(String prefix) {
        String wanted = lowerCase(prefix);
        List<Area> all = new ArrayList<>();
        for (String sheet : sheets.naming(wanted)) {
            all.add(new Area(sheet, 0, 0, LAST_ROW, LAST_COLUMN));
        }
        Map<CellPlace, String> found = new HashMap<>();
        for (Map.Entry<CellPlace, CellContent> cell : read(all).filled().entrySet()) {
            if (lowerCase(cell.getValue().formula()).contains(wanted)) {
                found.put(cell.getKey(), cell.getValue().formula());
            }
        }
        return found;
    }

    private boolean isSource(Path target) {
        try {
            return Files.exists(target) && Files.isSameFile(file, target);
        } catch (IOException e) {
            throw new BookNotWritableException(target, "it cannot be looked at", e);
        }
    }

    /** What is known before anything is worked out. */
    private void refuseUnfit(Path target) {
        SafeReplace.refuseIfOpenElsewhere(target);
        try {
            if (isSource(target) && !read.looksTheSameAs(target)) {
                throw new BookNotWritableException(target, SafeReplace.CHANGED);
            }
        } catch (IOException e) {
            throw new BookNotWritableException(target, "it cannot be looked at", e);
        }
    }

    /** What has to stand at the target when it is replaced: what was read, or what is there now. */
    private FileState expected(Path target) {
        try {
            return isSource(target) ? read : FileState.of(target);
        } catch (IOException e) {
            throw new BookNotWritableException(target, "it cannot be looked at", e);
        }
    }

    private void refuseSigned(Path target) {
        if (Signatures.in(title, zip)) {
            throw new BookNotWritableException(
                    target,
                    "it is digitally signed and a change would break the signature: remove the"
                            + " signature in a spreadsheet program first");
        }
    }

    /** New content of all parts that these values change, by entry name. */
    private Map<String, Deflated> patches(
            Map<CellPlace, CellValue> changes, boolean computeOnOpening) {
        Map<String, Deflated> parts = new HashMap<>();
        bySheet(changes)
                .forEach(
                        (sheet, values) ->
                                parts.put(sheets.entry(sheet).name(), patch(sheet, values)));
        patchCharts(changes, parts);
        if (computeOnOpening) {
            PartText text = workbook.text();
            List<Splice> change = new ArrayList<>();
            change.add(workbook.computeOnOpening());
            parts.put(text.part(), Splice.apply(text, change, text.bytes().length / 4));
        }
        return parts;
    }

    private static Map<String, Map<CellPlace, CellValue>> bySheet(
            Map<CellPlace, CellValue> changes) {
        Map<String, Map<CellPlace, CellValue>> bySheet = new LinkedHashMap<>();
        for (Map.Entry<CellPlace, CellValue> change : changes.entrySet()) {
            String sheet = change.getKey().sheet();
            bySheet.computeIfAbsent(sheet, name -> new HashMap<>())
                    .put(change.getKey(), change.getValue());
        }
        return bySheet;
    }

    private Deflated patch(String name, Map<CellPlace, CellValue> values) {
        SheetPart sheet = sheets.get(name);
        return Splice.apply(
                sheet.part(),
                SheetPatch.splices(sheet, name, values),
                ZipSnapshot.hint(sheets.entry(name)));
    }

    private void patchCharts(Map<CellPlace, CellValue> changes, Map<String, Deflated> parts) {
        for (String part : ContentTypes.of(zip).charts()) {
            ZipEntryRecord entry = zip.find(part);
            if (entry != null) {
                PartText text = zip.text(entry);
                List<Splice> splices = ChartPart.splices(text, this, changes);
                if (!splices.isEmpty()) {
                    parts.put(entry.name(), Splice.apply(text, splices, ZipSnapshot.hint(entry)));
                }
            }
        }
    }

    /** The area that a reference or a name in a formula stands for, or null. */
    Area areaOf(String reference) {
        Area area = AreaReference.parse(reference, workbook);
        if (area != null) {
            return area;
        }
        String name = reference.substring(reference.lastIndexOf('!') + 1).trim();
        return workbook.names().get(lowerCase(name));
    }

    private void readBack(Path target, Path file, Map<CellPlace, CellValue> changes) {
        try {
            XlsxBook book = open(file, workbook, null);
            for (Map.Entry<String, Map<CellPlace, CellValue>> sheet : bySheet(changes).entrySet()) {
                // Not kept, as the book that was read stands in memory beside it.
                SheetPart part = book.sheets.walk(sheet.getKey());
                for (Map.Entry<CellPlace, CellValue> change : sheet.getValue().entrySet()) {
                    CellPlace place = change.getKey();
                    if (!part.holds(part.find(place.row(), place.column()), change.getValue())) {
                        throw new BookNotWritableException(
                                target, "reading back " + place + " gave another value");
                    }
                }
            }
            book.zip.verify(Optional.of(zip));
        } catch (UnreadableBookException e) {
            throw new BookNotWritableException(
                    target, "the new file could not be read back: " + e.getMessage(), e);
        }
    }

    /** Every part of a written file is whole, this book's own ones or those in their place. */
    private void refuseTorn(Path target, Path written) {
        try {
            open(written).zip.verify(Optional.of(zip));
        } catch (UnreadableBookException e) {
            throw new BookNotWritableException(
                    target, "the new file could not be read back: " + e.getMessage(), e);
        }
    }

    /** The names of the sheets that were inflated so far, for tests. */
    Set<String> inflatedSheets() {
        return sheets.walked();
    }
}

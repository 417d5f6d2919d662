package shaftwright.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.CellWrite;
import shaftwright.book.Cells;
import shaftwright.book.OpenBook;
import shaftwright.contract.Contract;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.NewBook;
import shaftwright.xlsx.XlsxBook;

/**
 * A new workbook of today's tool, read once, held in memory, in which cells are typed. A file for
 * each of some hundred workbooks would take minutes.
 */
final class TypedBook implements OpenBook {
    private static final Map<String, XlsxBook> NEW = new ConcurrentHashMap<>();
    private static final Map<String, Map<CellPlace, CellContent>> CONTENTS =
            new ConcurrentHashMap<>();

    private final String title;
    private final Map<String, Area> names;
    private final Map<CellPlace, CellContent> laid;
    private final Map<CellPlace, CellContent> changed = new HashMap<>();

    private TypedBook(String title, Map<String, Area> names, Map<CellPlace, CellContent> laid) {
        this.title = title;
        this.names = names;
        this.laid = laid;
    }

    /** A new workbook as the tool lays it out. */
    static TypedBook blank(String title, LengthUnit unit, int scenarios) {
        String kind = unit.symbol() + scenarios;
        XlsxBook laid = NEW.computeIfAbsent(kind, k -> layOut(unit, scenarios));
        Map<CellPlace, CellContent> contents = CONTENTS.computeIfAbsent(kind, k -> decoded(laid));
        return new TypedBook(title, laid.names(), contents);
    }

    /** A file's cells decode themselves anew whenever they are asked. */
    private static Map<CellPlace, CellContent> decoded(XlsxBook laid) {
        Map<CellPlace, CellContent> cells = new HashMap<>();
        laid.read(laid.names().values())
                .filled()
                .forEach(
                        (place, cell) ->
                                cells.put(place, CellContent.of(cell.value(), cell.formula())));
        return cells;
    }

    private static XlsxBook layOut(LengthUnit unit, int scenarios) {
        try {
            Path file = Files.createTempFile("oracle", ".xlsx");
            NewBook.write(file, unit, scenarios);
            XlsxBook book = XlsxBook.open(file);
            book.read(book.names().values());
            Files.delete(file);
            return book;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Types whole inputs by defined name; cells beyond the values are blank. */
    void type(Map<String, List<CellValue>> typed) {
        List<CellWrite> writes = new ArrayList<>();
        for (Map.Entry<String, List<CellValue>> input : typed.entrySet()) {
            Area area = names.get(input.getKey());
            List<CellValue> values = input.getValue();
            for (int offset = 0; offset < area.size(); offset++) {
                writes.add(
                        new CellWrite(
                                area.place(offset),
                                offset < values.size() ? values.get(offset) : CellValue.BLANK));
            }
        }
        write(writes);
    }

    /** What stands in every input's cells, by defined name. */
    static Map<String, List<CellValue>> typedIn(OpenBook book) {
        Map<String, List<CellValue>> typed = new LinkedHashMap<>();
        Cells cells = book.read(book.names().values());
        for (String name : Contract.definedNames()) {
            Area area = book.names().get(name);
            List<CellValue> values = new ArrayList<>();
            for (int offset = 0; offset < area.size(); offset++) {
                values.add(cells.at(area.place(offset)).value());
            }
            typed.put(name, values);
        }
        return typed;
    }

    /** What a cell shows now. */
    CellValue value(CellPlace place) {
        return at(place).value();
    }

    private CellContent at(CellPlace place) {
        CellContent now = changed.get(place);
        return now == null ? laid.getOrDefault(place, CellContent.EMPTY) : now;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public Map<String, Area> names() {
        return names;
    }

    @Override
    public Cells read(Collection<Area> areas) {
        return new Cells() {
            @Override
            public CellContent at(CellPlace place) {
                return TypedBook.this.at(place);
            }

            @Override
            public Map<CellPlace, CellContent> filled() {
                Map<CellPlace, CellContent> filled = new HashMap<>();
                for (Area area : areas) {
                    for (int offset = 0; offset < area.size(); offset++) {
                        CellContent content = at(area.place(offset));
                        if (!content.isEmpty()) {
                            filled.put(area.place(offset), content);
                        }
                    }
                }
                return filled;
            }
        };
    }

    @Override
    public Map<CellPlace, String> formulasCalling(String prefix) {
        return Map.of();
    }

    @Override
    public void write(List<CellWrite> writes) {
        for (CellWrite write : writes) {
            CellContent now = at(write.place());
            changed.put(write.place(), CellContent.of(write.value(), now.formula()));
        }
    }
}

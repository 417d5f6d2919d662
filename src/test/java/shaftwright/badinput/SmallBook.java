package shaftwright.badinput;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.cli.Run;
import shaftwright.demo.DemoInputs;
import shaftwright.xlsx.XlsxBook;

/** A filled workbook of two scenarios with the demo vehicle in it, made once and copied. */
final class SmallBook {
    private static final int SCENARIOS = 2;
    private static final Map<String, Area> NAMES = new HashMap<>();
    private static final byte[] BYTES = make();

    private final Path file;

    private SmallBook(Path file) {
        this.file = file;
    }

    /** A copy named {@code shafts.xlsx}. */
    static SmallBook in(Path folder) {
        return at(folder.resolve("shafts.xlsx"));
    }

    static SmallBook at(Path file) {
        try {
            return new SmallBook(Files.write(file, BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path file() {
        return file;
    }

    byte[] bytes() {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Cells of a defined name in a workbook that nobody has rearranged. */
    static Area area(String name) {
        return NAMES.get(name);
    }

    /** Where a cell of a defined name stands; rows and scenarios count from 0. */
    CellPlace place(String name, int offset) {
        return NAMES.get(name).place(offset);
    }

    /** What a cell of a defined name shows. */
    CellValue value(String name, int offset) {
        CellPlace place = place(name, offset);
        XlsxBook book = XlsxBook.open(file);
        var content = book.read(List.of(NAMES.get(name))).at(place);
        return content == null ? CellValue.BLANK : content.value();
    }

    /** Puts a value into a cell, the way in which a spreadsheet program stores it. */
    SmallBook put(String name, int offset, CellValue value) {
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(place(name, offset), value));
        book.save(file);
        try {
            Files.deleteIfExists(file.resolveSibling("shafts.backup.xlsx"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    SmallBook put(String name, int offset, String text) {
        return put(name, offset, CellValue.of(text));
    }

    SmallBook put(String name, int offset, double number) {
        return put(name, offset, CellValue.of(number));
    }

    SmallBook clear(String name, int offset) {
        return put(name, offset, CellValue.BLANK);
    }

    private static byte[] make() {
        try {
            Path folder = Files.createTempDirectory("small");
            Path inputs = Files.writeString(folder.resolve("inputs.json"), json());
            Path file = folder.resolve("small.xlsx");
            Run run = Run.of("new", "--scenarios", SCENARIOS, "--inputs", inputs, file);
            if (run.code() != 0) {
                throw new IllegalStateException(run.err());
            }
            byte[] bytes = Files.readAllBytes(file);
            NAMES.putAll(XlsxBook.open(file).names());
            Files.delete(file);
            Files.delete(inputs);
            Files.delete(folder);
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String json() {
        StringBuilder json = new StringBuilder("{");
        for (Map.Entry<String, Object> input : DemoInputs.values().entrySet()) {
            Object value = input.getValue();
            if (value instanceof List<?> list
                    && shaftwright.contract.Contract.named(input.getKey()).grid().perScenario()) {
                value = list.subList(0, SCENARIOS);
            }
            json.append(json.length() > 1 ? "," : "").append('"').append(input.getKey());
            json.append("\":").append(written(value));
        }
        return json.append('}').toString();
    }

    private static String written(Object value) {
        if (value instanceof List<?> list) {
            StringBuilder texts = new StringBuilder();
            for (Object one : list) {
                texts.append(texts.length() > 0 ? "," : "").append(written(one));
            }
            return "[" + texts + "]";
        }
        return value instanceof String text ? '"' + text.replace("\"", "\\\"") + '"' : "" + value;
    }
}

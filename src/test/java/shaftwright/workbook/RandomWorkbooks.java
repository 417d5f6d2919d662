package shaftwright.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import shaftwright.filling.Filling;
import shaftwright.xlsx.XlsxBook;

/**
 * Files of {@link RandomWorkbook}s: new workbooks of the tool into which everything was typed. No
 * live cell of them has a value. Seeds whose sizes contradict each other, so that the tool refuses
 * the workbook, are passed over.
 */
public final class RandomWorkbooks {
    private final Path folder;
    private long seed;
    private int refused;

    /** Writes into this folder, from this seed on. */
    public RandomWorkbooks(Path folder, long seed) {
        this.folder = folder;
        this.seed = seed;
    }

    /** The next so many workbooks. */
    public List<Path> next(int count) {
        List<Path> files = new ArrayList<>();
        while (files.size() < count) {
            long now = seed++;
            Path file =
                    write(
                            new RandomWorkbook(now).withLoads(now),
                            folder.resolve("seed-" + now + ".xlsx"));
            Filling.Report report = Filling.compute(XlsxBook.open(file));
            if (report.hasErrors()) {
                refused++;
                delete(file);
            } else {
                DemoBook.fillEngineBlocks(file);
                files.add(file);
            }
        }
        return files;
    }

    /** Seeds passed over so far. */
    public int refused() {
        return refused;
    }

    private Path write(RandomWorkbook random, Path file) {
        XlsxBook book = XlsxBook.open(NewBook.write(file, random.unit(), random.scenarios()));
        random.typeInto(book);
        book.save(file);
        return file;
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package shaftwright.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.jobs.BookVariants;
import shaftwright.jobs.Failure;
import shaftwright.jobs.Journal;
import shaftwright.jobs.LookJob;

/**
 * A workbook that was opened here.
 *
 * @param file it
 * @param books its variants, or those of the workbooks that it compares; none where it has errors
 */
record LookedAt(Path file, List<BookVariants> books) {
    LookedAt {
        books = List.copyOf(books);
    }

    /** Looks at files one by one; those that are no workbook are said and left out. */
    static List<LookedAt> all(List<Path> files, Journal journal) {
        List<LookedAt> looked = new ArrayList<>();
        for (Path file : files) {
            try {
                Optional<List<BookVariants>> books = new LookJob(file).run(journal);
                looked.add(new LookedAt(file, books.orElse(List.of())));
            } catch (RuntimeException e) {
                if (Failure.of(e) != Failure.UNREADABLE) {
                    throw e;
                }
                journal.complain(e.getMessage());
            }
        }
        return looked;
    }

    /** The variants of all, under their files' names where there are several. */
    static List<BookVariants> named(List<LookedAt> looked, boolean several) {
        return looked.stream()
                .flatMap(
                        each ->
                                each.books().stream()
                                        .map(book -> several ? each.titled(book) : book))
                .toList();
    }

    private BookVariants titled(BookVariants book) {
        return new BookVariants(title(book), book.variants());
    }

    private String title(BookVariants book) {
        String name = file.getFileName().toString();
        return book.title().isEmpty() ? name : name + ", " + book.title();
    }
}

package shaftwright.oracle;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import shaftwright.book.CellValue;

/**
 * What is meant to differ from the oracle, each entry with its reason: see {@code differences.txt}.
 * The first entry that allows a difference is the one that it needs.
 */
final class ReviewedDifferences {
    private static final String REWORDED = "reworded";
    private static final String DIFFERS = "differs";
    private static final String MOVED = "moved";
    private static final String BECAME = " => ";

    /**
     * One entry.
     *
     * @param keys which answers
     * @param books which workbooks
     * @param was words that were replaced, else empty
     * @param is by which
     * @param bound how far numbers may move, empty where any difference is meant or words are
     */
    private record Entry(
            String line,
            Pattern keys,
            Pattern books,
            String was,
            String is,
            Optional<Bound> bound) {
        boolean isFor(String key, String book) {
            return keys.matcher(key).matches() && books.matcher(book).matches();
        }
    }

    private final List<Entry> entries;
    private final Set<Entry> met = new HashSet<>();

    private ReviewedDifferences(List<Entry> entries) {
        this.entries = entries;
    }

    /** A list as it stands. */
    static ReviewedDifferences read(String resource) {
        try (BufferedReader in =
                new BufferedReader(
                        new InputStreamReader(
                                ReviewedDifferences.class.getResourceAsStream(resource),
                                StandardCharsets.UTF_8))) {
            return of(in.lines().toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Leaves what is said about a list, no entry. */
    static void empty(Path list) throws IOException {
        Files.write(
                list,
                Files.readAllLines(list).stream().takeWhile(line -> line.startsWith("#")).toList());
    }

    /** A list of these lines. */
    static ReviewedDifferences of(List<String> lines) {
        return new ReviewedDifferences(
                lines.stream()
                        .filter(line -> !line.isBlank() && !line.startsWith("#"))
                        .map(ReviewedDifferences::entry)
                        .toList());
    }

    private static Entry entry(String line) {
        String[] parts = line.split(" \\| ", -1);
        if (parts[0].strip().equals(DIFFERS) && parts.length == 4) {
            return new Entry(line, glob(parts[1]), glob(parts[2]), "", "", Optional.empty());
        }
        if (parts[0].strip().equals(MOVED) && parts.length == 5) {
            Bound bound = Bound.parse(parts[3].strip());
            return new Entry(line, glob(parts[1]), glob(parts[2]), "", "", Optional.of(bound));
        }
        if (parts[0].strip().equals(REWORDED) && parts.length == 4 && parts[2].contains(BECAME)) {
            int split = parts[2].indexOf(BECAME);
            return new Entry(
                    line,
                    glob(parts[1]),
                    glob("*"),
                    parts[2].substring(0, split).strip(),
                    parts[2].substring(split + BECAME.length()).strip(),
                    Optional.empty());
        }
        throw new IllegalArgumentException(
                "found \""
                        + line
                        + "\"; expected \"differs | keys | workbooks | reason\","
                        + " \"moved | keys | workbooks | at most 0.02 | reason\" or"
                        + " \"reworded | keys | was => is | reason\"");
    }

    /** Patterns with asterisks, divided by commas. */
    private static Pattern glob(String texts) {
        return Pattern.compile(
                Arrays.stream(texts.strip().split(", +"))
                        .map(ReviewedDifferences::quoted)
                        .collect(Collectors.joining("|")));
    }

    private static String quoted(String text) {
        return Arrays.stream(text.split("\\*", -1))
                .map(Pattern::quote)
                .collect(Collectors.joining(".*"));
    }

    /**
     * How one column differs, when that is not meant.
     *
     * @param found null when there is no such column any more
     */
    Optional<String> unmeant(String book, String key, Column wanted, List<CellValue> found) {
        Optional<String> difference = difference(key, wanted, found, Bound.ROUNDING);
        if (difference.isEmpty()) {
            return difference;
        }
        List<Entry> own = entries.stream().filter(entry -> entry.isFor(key, book)).toList();
        List<Entry> used = new ArrayList<>();
        Column reworded = wanted.reworded(text -> reworded(text, own, used));
        difference = difference(key, reworded, found, Bound.ROUNDING);
        if (difference.isEmpty()) {
            met.addAll(used);
            return difference;
        }
        for (Entry entry : own) {
            if (entry.bound().isPresent()) {
                difference = difference(key, reworded, found, entry.bound().get());
                if (difference.isEmpty()) {
                    met.addAll(used);
                    met.add(entry);
                    return difference;
                }
            }
        }
        List<Entry> meant =
                own.stream().filter(e -> e.was().isEmpty() && e.bound().isEmpty()).toList();
        met.addAll(meant);
        return meant.isEmpty() ? difference : Optional.empty();
    }

    private static Optional<String> difference(
            String key, Column wanted, List<CellValue> found, Bound bound) {
        if (found == null) {
            return Optional.of("wanted " + wanted + ", found no such answer");
        }
        return key.equals(Answers.SAID)
                ? wanted.missingFrom(found)
                : wanted.difference(found, bound);
    }

    private static String reworded(String text, List<Entry> entries, List<Entry> used) {
        String now = text;
        for (Entry entry : entries) {
            if (!entry.was().isEmpty() && now.contains(entry.was())) {
                now = now.replace(entry.was(), entry.is());
                used.add(entry);
            }
        }
        return now;
    }

    /** Entries that no difference needed. */
    List<String> idle() {
        return entries.stream().filter(entry -> !met.contains(entry)).map(Entry::line).toList();
    }
}

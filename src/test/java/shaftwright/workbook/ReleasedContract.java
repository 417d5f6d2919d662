package shaftwright.workbook;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;

/**
 * The contract that is out among builders, as a listing of its inputs and live lines: name, number
 * of cells, versions, and of a line a hash of its formulas, which name quantities and no places.
 *
 * @param version of the contract
 * @param inputs by name
 * @param lines by name
 */
public record ReleasedContract(
        int version, Map<String, ReleasedContract.Entry> inputs, Map<String, Entry> lines) {
    private static final String FILE = "released-contract.txt";
    private static final int HASH_BYTES = 6;

    /**
     * What is listed of an input or line.
     *
     * @param rows in each side and scenario
     * @param since version that brought it
     * @param revised version that last changed its formula
     * @param hash of its formulas; empty of an input, and of a line that a fill writes
     */
    record Entry(int rows, int since, int revised, String hash) {
        static Entry of(Input input) {
            return new Entry(input.grid().rows(), input.since(), input.since(), "-");
        }

        static Entry of(LiveLine line) {
            return new Entry(line.grid().rows(), line.since(), line.revised(), hashOf(line));
        }

        private static Entry of(String[] fields) {
            return new Entry(
                    Integer.parseInt(fields[2]),
                    Integer.parseInt(fields[3]),
                    Integer.parseInt(fields[4]),
                    fields[5]);
        }

        private String text(String kind, String name) {
            return String.join(" ", kind, name, "" + rows, "" + since, "" + revised, hash);
        }
    }

    /** As it was listed. */
    static ReleasedContract listed() {
        Map<String, Entry> inputs = new LinkedHashMap<>();
        Map<String, Entry> lines = new LinkedHashMap<>();
        try (BufferedReader file =
                new BufferedReader(
                        new InputStreamReader(
                                ReleasedContract.class.getResourceAsStream(FILE),
                                StandardCharsets.UTF_8))) {
            int version = Integer.parseInt(file.readLine().replaceAll("\\D", ""));
            file.lines()
                    .map(line -> line.split(" "))
                    .forEach(
                            fields ->
                                    (fields[0].equals("input") ? inputs : lines)
                                            .put(fields[1], Entry.of(fields)));
            return new ReleasedContract(version, inputs, lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes the listing of this code's contract into a folder. */
    public static void main(String[] arguments) throws IOException {
        List<String> text = new ArrayList<>();
        text.add("contract version " + Contract.VERSION);
        for (Input input : Contract.inputs()) {
            text.add(Entry.of(input).text("input", input.name()));
        }
        for (LiveLine line : LiveLines.all().lines()) {
            text.add(Entry.of(line).text("line", line.name()));
        }
        Files.write(Path.of(arguments[0], FILE), text);
    }

    private static String hashOf(LiveLine line) {
        if (line.isEngine()) {
            return "-";
        }
        MessageDigest digest = sha();
        Grid grid = line.grid();
        for (Side side : grid.sided() ? Side.values() : new Side[] {Side.LEFT}) {
            for (int row = 0; row < grid.rows(); row++) {
                String formula = line.formula().at(new Index(side, 0, row));
                digest.update((formula + "\n").getBytes(StandardCharsets.UTF_8));
            }
        }
        return HexFormat.of().formatHex(Arrays.copyOf(digest.digest(), HASH_BYTES));
    }

    private static MessageDigest sha() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}

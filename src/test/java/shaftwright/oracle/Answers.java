package shaftwright.oracle;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shaftwright.book.Area;
import shaftwright.book.CellValue;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.cli.ShownReport;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.reading.ScenarioOutcome;

/**
 * All that the tool answers to one workbook, a column of values by key:
 *
 * <ul>
 *   <li>{@code filled}: whether it is filled or refused;
 *   <li>{@code said}: errors and warnings, without cell addresses;
 *   <li>{@code show.…}: what {@code show --json} prints, {@code
 *       show.scenarios[B].left.slack_in_mm};
 *   <li>a live line's defined name, {@code worst_slack_in_left[B]} where each scenario has its own.
 * </ul>
 */
final class Answers {
    static final String FILLED = "filled";
    static final String SAID = "said";

    private static final String SHOW = "show";

    /** What only repeats the inputs, the file or {@link #SAID}. */
    private static final Set<String> REPEATED =
            Set.of("show.contract", "show.file", "show.inputs", "show.warnings");

    private final TypedBook book;
    private final int scenarios;
    private final Map<String, List<CellValue>> columns = new LinkedHashMap<>();

    private Answers(TypedBook book, int scenarios) {
        this.book = book;
        this.scenarios = scenarios;
    }

    /** What today's tool answers to what is typed there. */
    static Map<String, List<CellValue>> to(Oracle.Book question) {
        TypedBook book = TypedBook.blank(question.name(), question.unit(), question.scenarios());
        book.type(question.typed());
        Answers answers = new Answers(book, question.scenarios());
        Filling.Report report = Filling.fill(book);
        answers.columns.put(FILLED, List.of(CellValue.of(report.hasErrors() ? "refused" : FILLED)));
        answers.said(report.problems());
        if (!report.hasErrors()) {
            answers.shown(ShownReport.json(book.title(), report));
            answers.live();
        }
        return answers.columns;
    }

    private void said(List<Problem> problems) {
        columns.put(
                SAID,
                problems.stream()
                        .map(Problem::toString)
                        .map(text -> text.replaceAll("cell [A-Z]+[0-9]+", "cell"))
                        .sorted()
                        .map(CellValue::of)
                        .toList());
    }

    private void shown(String json) {
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            parser.nextToken();
            members(parser, SHOW);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void members(JsonParser parser, String key) throws IOException {
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String member = key + "." + parser.currentName();
            parser.nextToken();
            if (REPEATED.contains(member)) {
                parser.skipChildren();
            } else {
                value(parser, member);
            }
        }
    }

    private void value(JsonParser parser, String key) throws IOException {
        switch (parser.currentToken()) {
            case START_OBJECT -> members(parser, key);
            case START_ARRAY -> elements(parser, key);
            case VALUE_STRING -> add(key, CellValue.of(parser.getText()));
            case VALUE_NULL -> add(key, CellValue.BLANK);
            case VALUE_TRUE, VALUE_FALSE -> add(key, new CellValue.Truth(parser.getBooleanValue()));
            default -> add(key, CellValue.of(parser.getDoubleValue()));
        }
    }

    /** Scenarios are told apart by letter, other elements stand in one column. */
    private void elements(JsonParser parser, String key) throws IOException {
        boolean lettered = key.equals("show.scenarios");
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (lettered) {
                parser.nextToken();
                parser.nextToken();
                members(parser, key + "[" + parser.getText() + "]");
            } else {
                value(parser, key + "[]");
            }
        }
    }

    private void add(String key, CellValue value) {
        columns.computeIfAbsent(key, k -> new ArrayList<>()).add(value);
    }

    private void live() {
        for (LiveLine line : LiveLines.all().lines()) {
            // Fingerprints hold every input: the next one that comes changes them all.
            if (!line.name().endsWith("_print") && !line.name().endsWith("_print_filled")) {
                for (Side side : Side.values()) {
                    if (line.grid().sided() || side == Side.LEFT) {
                        live(line.definedName(side), line.grid(), side);
                    }
                }
            }
        }
    }

    private void live(String name, Grid grid, Side side) {
        Area area = book.names().get(name);
        for (int offset = 0; offset < area.size(); offset++) {
            int scenario = Index.at(grid, side, offset, scenarios).scenario();
            String letter = "[" + ScenarioOutcome.letter(scenario) + "]";
            add(grid.perScenario() ? name + letter : name, book.value(area.place(offset)));
        }
    }
}

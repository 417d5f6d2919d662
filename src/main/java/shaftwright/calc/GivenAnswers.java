package shaftwright.calc;

import com.sun.star.beans.PropertyValue;
import com.sun.star.uno.Any;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import shaftwright.jobs.JobRefusedException;
import shaftwright.reading.ScenarioOutcome;

/**
 * Answers that a script gave with its command, by name: {@code From}, a workbook's URL; {@code
 * Scenario} and {@code As}, letters; {@code Files}, URLs; {@code Show} and {@code Hide}, names of
 * sheets; {@code Agree}, whether to write; {@code Row}, from 0, of what was found. What it did not
 * give is asked for.
 */
final class GivenAnswers implements Questions {
    private final Map<String, Object> given = new HashMap<>();
    private final Optional<Questions> others;

    /** Without others to ask, a question that has no answer ends the command. */
    GivenAnswers(PropertyValue[] arguments, Optional<Questions> others) {
        for (PropertyValue argument : arguments) {
            given.put(
                    argument.Name,
                    argument.Value instanceof Any any ? any.getObject() : argument.Value);
        }
        this.others = others;
    }

    private Questions others(String missing) {
        return others.orElseThrow(
                () -> new JobRefusedException("found no argument " + missing + "; expected one"));
    }

    private Optional<String> text(String name) {
        return given.get(name) instanceof String text ? Optional.of(text) : Optional.empty();
    }

    private Optional<List<String>> texts(String name) {
        return given.get(name) instanceof Object[] texts
                ? Optional.of(List.of(texts).stream().map(String::valueOf).toList())
                : Optional.empty();
    }

    /** The row to choose of what was found. */
    Optional<Integer> row() {
        return given.get("Row") instanceof Number row && row.intValue() >= 0
                ? Optional.of(row.intValue())
                : Optional.empty();
    }

    @Override
    public Optional<Path> workbook() {
        return text("From").flatMap(DocumentFile::path).or(() -> others("From").workbook());
    }

    @Override
    public Optional<List<Path>> workbooks(List<Path> first) {
        if (texts("Files").isEmpty()) {
            return others("Files").workbooks(first);
        }
        List<Path> files = new ArrayList<>();
        texts("Files").get().forEach(url -> DocumentFile.path(url).ifPresent(files::add));
        return Optional.of(files);
    }

    /** A scenario that is given, by its zero-based column. */
    private OptionalInt letter(String name) {
        return text(name).map(ScenarioOutcome::number).orElse(OptionalInt.empty());
    }

    @Override
    public Optional<Choice> taking(List<Offer> variants, List<String> columns, int free) {
        OptionalInt scenario = letter("Scenario");
        return scenario.isEmpty()
                ? others("Scenario").taking(variants, columns, free)
                : Optional.of(new Choice(scenario.getAsInt(), letter("As").orElse(free)));
    }

    @Override
    public Optional<Set<String>> sheets(Map<String, Boolean> seen) {
        if (texts("Show").isEmpty() && texts("Hide").isEmpty()) {
            return others("Show or Hide").sheets(seen);
        }
        Set<String> wanted = new LinkedHashSet<>();
        seen.forEach(
                (name, isSeen) -> {
                    if (isSeen) {
                        wanted.add(name);
                    }
                });
        wanted.addAll(texts("Show").orElse(List.of()));
        wanted.removeAll(texts("Hide").orElse(List.of()));
        return Optional.of(wanted);
    }

    @Override
    public boolean agrees(String question, List<String> page) {
        return given.get("Agree") instanceof Boolean agreed
                ? agreed
                : others("Agree").agrees(question, page);
    }
}

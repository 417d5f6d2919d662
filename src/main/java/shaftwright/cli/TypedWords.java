package shaftwright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;
import shaftwright.build.Side;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;
import shaftwright.units.LengthUnit;

/** What the words of a command line stand for; no option or parameter takes an empty one. */
final class TypedWords {
    private TypedWords() {}

    /** Has all commands read files, units, sides, letters, ranges and cell functions by these. */
    static void register(CommandLine commands) {
        commands.registerConverter(Path.class, TypedWords::file);
        commands.registerConverter(String.class, TypedWords::text);
        commands.registerConverter(LengthUnit.class, TypedWords::unit);
        commands.registerConverter(Side.class, TypedWords::side);
        commands.registerConverter(ScenarioLetter.class, ScenarioLetter::parse);
        commands.registerConverter(SweepRange.class, SweepRange::parse);
        commands.registerConverter(CellFunction.class, TypedWords::function);
    }

    /** What is wrong with a word, said behind the name of its option or parameter. */
    static TypeConversionException refused(String found, String expected) {
        return new TypeConversionException("found \"" + found + "\"; expected " + expected + ".");
    }

    private static Path file(String typed) {
        try {
            Path file = Path.of(typed);
            if (file.getFileName() != null && !typed.isEmpty()) {
                return file;
            }
        } catch (InvalidPathException e) {
            // Said below, as of every other text that is no file name.
        }
        throw refused(typed, "a file name");
    }

    private static String text(String typed) {
        if (typed.isEmpty()) {
            throw refused(typed, "a text");
        }
        return typed;
    }

    private static LengthUnit unit(String typed) {
        return switch (typed) {
            case "inch" -> LengthUnit.INCH;
            case "mm" -> LengthUnit.MILLIMETRE;
            default -> throw refused(typed, "inch or mm");
        };
    }

    private static Side side(String typed) {
        for (Side side : Side.values()) {
            if (side.word().equals(typed)) {
                return side;
            }
        }
        throw refused(typed, "left or right");
    }

    private static CellFunction function(String typed) {
        return Catalogue.find(typed)
                .orElseThrow(
                        () ->
                                new TypeConversionException(
                                        "no function is called \""
                                                + typed
                                                + "\"; the command functions lists all"));
    }
}

package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;

/** What the cell B2 of the sheet "Own" reads by a formula that is written for it. */
class FormulaOperandsTest {
    private static final CellPlace READER = new CellPlace("Own", 1, 1);

    private static final FormulaSources SOURCES =
            new FormulaSources(
                    List.of("Own", "Two", "It's 3"),
                    List.of(
                            new DefinedName("fixed", "", "Two!$C$4"),
                            new DefinedName("fixed", "Two", "Two!$C$5"),
                            new DefinedName("left_of_me", "", "Own!XFD1"),
                            new DefinedName("above_me", "", "!A1048576"),
                            new DefinedName("sum_of_both", "", "fixed+left_of_me"),
                            new DefinedName("circle", "", "circle+1"),
                            new DefinedName("unit", "", "Own!$H$1")),
                    Map.of("prices", new Area("Two", 0, 0, 9, 3)));

    private static List<String> read(String formula) {
        List<String> read = new ArrayList<>();
        Area alone = new Area("Own", 1, 1, 1, 1);
        SOURCES.tell(
                READER,
                new StoredFormula(StoredFormula.Kind.CELL, formula, READER, alone),
                new FormulaSources.Reads() {
                    @Override
                    public void area(Area area) {
                        CellPlace last = area.place(area.size() - 1);
                        String cells = area.place(0).address();
                        cells += area.size() == 1 ? "" : ":" + last.address();
                        read.add(area.sheet().equals("Own") ? cells : area.sheet() + "!" + cells);
                    }

                    @Override
                    public void anything() {
                        read.add("anything");
                    }
                });
        return read;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "A1+$B$3 | A1 B3",
                "sum(c3:A1,Two!D$5) | A1:C3 Two!D5",
                "'It''s 3'!A1&\"Two!B9\" | It's 3!A1",
                "LOG10(A1)+ATAN2(B1,1e5) | A1 B1",
                "Two!A1:B2 Two!B2:C3 | Two!A1:B2 Two!B2:C3",
                "Own:Two!A1 | A1 Two!A1",
                "'Two:It''s 3'!A1:A2 | Two!A1:A2 It's 3!A1:A2",
                "fixed*2 | Two!C4",
                "Two!fixed | Two!C5",
                "left_of_me | A2",
                "above_me | B1",
                "sum_of_both | Two!C4 A2",
                "SUM(Prices[Cost])+Prices[[#This Row],[#, it''s]] | Two!A1:D10 Two!A1:D10",
                "SHAFT.MILLIMETRES(1.5) | H1",
                "VLOOKUP(A1,{1,\"A2\";3,4},2,TRUE)+#REF!+#N/A | A1",
                "_xlfn.LET(_xlpm.x,A1,_xlpm.x*2) | A1",
                "NOSUCHFUNCTION(A1,nosuchname) | A1",
                "_xlfn.ANCHORARRAY(A1)+A3# | A1 A3",
                "Nowhere!A1+A3 | A3",
            })
    void cellsAreFound(String formula, String cells) {
        assertThat(String.join(" ", read(formula))).isEqualTo(cells);
    }

    @Test
    void wholeColumnsAndRowsAreFound() {
        assertThat(read("COUNT($A:C)")).containsExactly("A1:C1048576");
        assertThat(read("COUNT(Two!1:$3)")).containsExactly("Two!A1:XFD3");
        assertThat(read("COUNT($2:3)")).containsExactly("A2:XFD3");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "INDIRECT(\"A1\")",
                "SUM(OFFSET(A1,1,1))",
                "_xlfn.CELL(\"row\")",
                "SUM(A1:INDEX(B:B,3))",
                "SUM(fixed:B3)",
                "SUM((A1):(B2))",
                "Unknown[Cost]",
                "circle",
                "",
            })
    void whatCannotBeToldMayBeAnything(String formula) {
        assertThat(read(formula)).contains("anything");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[1]Other!A1",
                "'[1]Its sheet'!$A$1:B2",
                "'C:\\shop\\[prices.xlsx]Sheet 1'!A1",
                "[1]!total",
                "\"A1\"\"B1\"",
                "1+2.5e-3",
                "TRUE",
            })
    void otherWorkbooksAndConstantsAreNoCellsOfThisOne(String formula) {
        assertThat(read(formula)).isEmpty();
    }

    @Test
    void sharedFormulasMoveWithTheirCells() {
        List<Area> read = new ArrayList<>();
        CellPlace home = new CellPlace("Own", 0, 0);
        Area alone = new Area("Own", 1, 1, 1, 1);
        SOURCES.tell(
                READER,
                new StoredFormula(StoredFormula.Kind.CELL, "C3+$C$3+C$3", home, alone),
                new FormulaSources.Reads() {
                    @Override
                    public void area(Area area) {
                        read.add(area);
                    }

                    @Override
                    public void anything() {
                        throw new AssertionError();
                    }
                });
        assertThat(read)
                .extracting(area -> area.place(0).address())
                .containsExactly("D4", "C3", "D3");
    }
}

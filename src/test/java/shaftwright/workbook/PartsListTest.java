package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.filling.Filling;
import shaftwright.xlsx.XlsxBook;

/** Sums by hand: invented prices. */
class PartsListTest {
    /** Of which the last has no name. */
    private static final int SCENARIOS = 6;

    private static final List<String> COSTS =
            List.of(
                    "cost_shafts",
                    "cost_joints",
                    "cost_boots",
                    "cost_total",
                    "cost_spares",
                    "cost_with_spares",
                    "list_shaft_left_price",
                    "list_vehicle",
                    "start_cost");

    @TempDir private Path folder;

    @Test
    void aPairOfShaftsFourJointsAndFourBootKits() {
        XlsxBook book = filled("290", "78");

        assertThat(cell(book, "list_pair")).isEqualTo(CellValue.of(290));
        assertThat(cell(book, "list_shaft_left_each")).isEqualTo(CellValue.of(145));
        assertThat(cell(book, "list_joint_inner_count")).isEqualTo(CellValue.of(2));
        assertThat(cell(book, "list_joint_inner_each")).isEqualTo(CellValue.of(78));
        assertThat(cell(book, "list_joint_inner_price")).isEqualTo(CellValue.of(156));
        assertThat(cell(book, "list_boot_outer_price")).isEqualTo(CellValue.of(46));
        assertThat(cell(book, "list_vehicle")).isEqualTo(CellValue.of(694));
        assertThat(cell(filled("512", "78"), "list_vehicle")).isEqualTo(CellValue.of(916));
    }

    @Test
    void sparesAreListedAndAddedUp() {
        XlsxBook book = filled("290", "78");

        assertThat(cell(book, "list_shaft_left_spare")).isEqualTo(CellValue.of(1));
        assertThat(cell(book, "list_joint_outer_spare")).isEqualTo(CellValue.of(2));
        assertThat(cell(book, "list_spares")).isEqualTo(CellValue.of(145 + 156));
        assertThat(cell(book, "list_all")).isEqualTo(CellValue.of(694 + 301));
    }

    @Test
    void aPartWithoutAPriceIsNamedSo() {
        XlsxBook book = filled("290", "");

        assertThat(cell(book, "list_joint_inner_each")).isEqualTo(CellValue.of("no price"));
        assertThat(cell(book, "list_joint_inner_price")).isEqualTo(CellValue.of(""));
        assertThat(cell(book, "cost_joints")).isEqualTo(CellValue.of("no price"));
        assertThat(cell(book, "list_vehicle")).isEqualTo(CellValue.of("382.00 without joints"));
        assertThat(cell(book, "list_spares")).isEqualTo(CellValue.of("not priced"));
        assertThat(cell(book, "list_all")).isEqualTo(CellValue.of("not priced"));
    }

    /** What is live says the same as what a fill wrote, whatever is missing. */
    @Test
    void aTotalWithoutAUsableBlankSaysThatTheShaftsAreMissing() throws IOException {
        Map<String, List<String>> typed = new HashMap<>(typed("", "78"));
        typed.put("blank_in_stock", Collections.nCopies(9, "no"));
        XlsxBook book = filled(typed);

        assertThat(cell(book, "cost_shafts")).isEqualTo(CellValue.of("no blank"));
        assertThat(cell(book, "cost_total")).isEqualTo(CellValue.of("404.00 without shafts"));
        assertThat(cell(book, "start_cost")).isEqualTo(CellValue.of("404.00 without shafts"));
        assertThat(cell(book, "cost_spares")).isEqualTo(CellValue.of("not priced"));
        try (PoiRecalculation poi = PoiRecalculation.of(folder.resolve("book.xlsx"))) {
            for (String name : COSTS) {
                for (int scenario = 0; scenario < SCENARIOS; scenario++) {
                    CellPlace place = book.names().get(name).place(scenario);
                    assertThat(poi.value(place))
                            .as(name + " " + scenario)
                            .isEqualTo(
                                    book.read(List.of(book.names().get(name))).at(place).value());
                }
            }
        }
    }

    @Test
    void nothingPricedIsNoCostOfNothing() {
        Map<String, List<String>> typed = new HashMap<>(typed("", ""));
        typed.put("boot_price", List.of());
        typed.put("blank_price", List.of());

        assertThat(cell(filled(typed), "cost_total")).isEqualTo(CellValue.of("not priced"));
    }

    private XlsxBook filled(String pair, String joint) {
        return filled(typed(pair, joint));
    }

    private static Map<String, List<String>> typed(String pair, String joint) {
        Map<String, List<String>> typed = new HashMap<>(DemoBook.typed());
        typed.put("shaft_pair_price", List.of(pair));
        typed.put("other_cost", List.of());
        typed.put("joint_price", Collections.nCopies(3, joint));
        typed.put("boot_price", Collections.nCopies(3, "23"));
        typed.put("spare_shafts", List.of("1"));
        typed.put("spare_joints_inner", List.of());
        typed.put("spare_joints_outer", List.of("2"));
        typed.put("spare_boots_inner", List.of());
        typed.put("spare_boots_outer", List.of());
        return typed;
    }

    private XlsxBook filled(Map<String, List<String>> typed) {
        Path file = DemoBook.write(folder.resolve("book.xlsx"), typed, SCENARIOS);
        XlsxBook book = XlsxBook.open(file);
        Filling.fill(book);
        book.save(file);
        return XlsxBook.open(file);
    }

    private static CellValue cell(XlsxBook book, String name) {
        Area area = book.names().get(name);
        return book.read(List.of(area)).at(area.place(0)).value();
    }
}

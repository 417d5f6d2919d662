package shaftwright.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PiecesTest {
    private static final Pieces ROW = Pieces.of("row", "{rated_row}").and("most", 0.75);

    @Test
    void putsPiecesWhereTheyAreNamed() {
        assertThat(ROW.in("IF(<row>=0,FALSE,{share}><most>)"))
                .isEqualTo("IF({rated_row}=0,FALSE,{share}>0.75)");
    }

    @Test
    void makesAPieceOfOthers() {
        assertThat(ROW.and("share", "INDEX(share,<row>)").in("<share>/2"))
                .isEqualTo("INDEX(share,{rated_row})/2");
    }

    @Test
    void writesWholeNumbersWithoutDecimals() {
        assertThat(Pieces.of("steps", 12).in("1/<steps>")).isEqualTo("1/12");
    }

    @Test
    void leavesOutLineEndsWithTheIndentsAfterThem() {
        assertThat(
                        Pieces.NONE.in(
                                """
                                IF({used}=0,
                                    "",
                                "not used ")"""))
                .isEqualTo("IF({used}=0,\"\",\"not used \")");
    }

    @Test
    void takesComparisonsForWhatTheyAre() {
        String comparisons = "IF(OR({a}<{b},{a}<c_read,{a}<>\"\",{first>last}<=0),1,0)";
        assertThat(ROW.in(comparisons)).isEqualTo(comparisons);
        assertThat(ROW.in("{a}<<row>")).isEqualTo("{a}<{rated_row}");
    }

    @Test
    void leavesOtherPiecesOpen() {
        assertThat(ROW.in("<column>+<row>")).isEqualTo("<column>+{rated_row}");
    }

    @Test
    void refusesAPieceThatItDoesNotHaveInAWholeText() {
        assertThatThrownBy(() -> ROW.whole("<column>+1")).hasMessageContaining("<column>");
    }
}

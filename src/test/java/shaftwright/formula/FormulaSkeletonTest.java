package shaftwright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaSkeletonTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "A1+25.4                    | $B$7 + 25.3999999999999999997",
                "{ready}*2                  | 'Working ''A'''!$C$4*2",
                "{ready}*2                  | Working!C4*2",
                "SUM({travel:all})          | sum( 'W 1'!$A$1:$B$9 )",
                "SUM({travel>slack})        | SUM(Work!A1:Work!B1)",
                "SUM({travel:all})          | SUM(travel_left)",
                "ROWS({:ordinal})           | ROWS(ROWS(B$3:B7))",
                "IF(a=1,TRUE,FALSE)         | IF(Z9=1,TRUE(),FALSE())",
                "IFERROR(a,NA())            | _xlfn.IFERROR(b,NA())",
                "height~&\"a b\"            | A1 & \"a b\"",
                "1E-3*a                     | 0.001*a",
                "PI()/180                   | PI()/1.8E2",
                "{1,2;3}                    | {1,2;3}",
            })
    void samePiecesInTheSameOrderAreTheSame(String declared, String rewritten) {
        assertThat(FormulaSkeleton.of(declared)).isEqualTo(FormulaSkeleton.of(rewritten));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "A1+25.4       | A1+25.41",
                "A1+A2         | A1-A2",
                "SUM(A1:A3)    | SUM(A1:A3,A4)",
                "SUM(A1)       | MIN(A1)",
                "A1&\"in\"     | A1&\"mm\"",
                "A1<B1         | A1<=B1",
                "A1            | 12",
                "IF(A1,1,0)    | IF(A1,0,1)",
                "A1*2          | A1*2+0",
                "IF(A1,TRUE,0) | IF(A1,FALSE,0)",
                "ROUND(A1,6)   | ROUND(A1,16)",
            })
    void anythingElseIsAnotherFormula(String declared, String edited) {
        assertThat(FormulaSkeleton.of(declared)).isNotEqualTo(FormulaSkeleton.of(edited));
    }
}

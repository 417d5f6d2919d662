package shaftwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What systems answer, as their documents say; from memory. */
class AppearanceTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    Linux      | 'prefer-dark'                         | true
                    Linux      | 'default'                             | false
                    Linux      | ''                                    | false
                    Windows 11 | AppsUseLightTheme    REG_DWORD    0x0 | true
                    Windows 11 | AppsUseLightTheme    REG_DWORD    0x1 | false
                    Mac OS X   | Dark                                  | true
                    Mac OS X   | ''                                    | false
                    """)
    void followsTheSystem(String system, String answer, boolean dark) {
        assertThat(Appearance.isDark(system, asked -> answer + "\n")).isEqualTo(dark);
    }
}

package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A slip of the keyboard ends in a sentence, never in an error value: some kinds of slip, computed
 * by Apache POI's evaluator.
 */
class SpoiltWorkbooksTest {
    private static final int SHARE = 21;

    @TempDir Path folder;

    @Test
    void slipsEndInASentence() throws Exception {
        List<Path> files = SpoiltWorkbooks.write(folder, 0, SHARE);
        List<String> complaints = new ArrayList<>();
        for (Path file : files) {
            try (PoiRecalculation poi = PoiRecalculation.of(file)) {
                complaints.addAll(SpoiltWorkbooks.complaints(file, poi::value));
            }
        }
        assertThat(complaints).isEmpty();
        assertThat(files).hasSizeGreaterThan(7);
    }
}

package shaftwright.xlsx;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What became of the file that stood where a new one was written.
 *
 * @param backup where it is kept, empty when there was none or nothing was written
 * @param otherNames how many other names (hard links) it has, which still stand for it and not for
 *     the new file
 */
public record Replaced(Optional<Path> backup, int otherNames) {
    /** There was none, or it was left as it was. */
    public static final Replaced NOTHING = new Replaced(Optional.empty(), 0);
}

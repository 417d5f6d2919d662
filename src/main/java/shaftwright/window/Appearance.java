package shaftwright.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.EventQueue;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/** Light or dark, as the system is set. */
final class Appearance {
    private static final long PATIENCE_S = 2;

    private Appearance() {}

    /**
     * Begins light, which most systems are, and follows the system as soon as that has answered.
     */
    static void begin() {
        FlatLightLaf.setup();
        follow();
    }

    /** Asks the system beside everything else, and changes the look if it has changed. */
    @SuppressWarnings("FutureReturnValueIgnored") // Without an answer the look stays.
    static void follow() {
        CompletableFuture.supplyAsync(
                        () -> isDark(System.getProperty("os.name"), Appearance::answer))
                .thenAccept(dark -> EventQueue.invokeLater(() -> change(dark)));
    }

    private static void change(boolean dark) {
        if (dark == FlatLaf.isLafDark()) {
            return;
        }
        if (dark) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        FlatLaf.updateUI();
    }

    /**
     * Whether a system says that it is dark.
     *
     * @param system its name as Java has it
     * @param ask what a program of the system answers, empty when it can't be asked
     */
    static boolean isDark(String system, Function<List<String>, String> ask) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("win")) {
            String key = "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize";
            return ask.apply(List.of("reg", "query", key, "/v", "AppsUseLightTheme"))
                    .strip()
                    .endsWith("0x0");
        }
        if (name.startsWith("mac")) {
            return ask.apply(List.of("defaults", "read", "-g", "AppleInterfaceStyle"))
                    .strip()
                    .equals("Dark");
        }
        return ask.apply(List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme"))
                .contains("prefer-dark");
    }

    private static String answer(List<String> command) {
        try {
            Process process =
                    new ProcessBuilder(command)
                            .redirectError(ProcessBuilder.Redirect.DISCARD)
                            .start();
            try {
                boolean ended = process.waitFor(PATIENCE_S, TimeUnit.SECONDS);
                return ended
                        ? new String(
                                process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                        : "";
            } finally {
                process.destroyForcibly();
            }
        } catch (IOException e) {
            return "";
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "";
        }
    }
}

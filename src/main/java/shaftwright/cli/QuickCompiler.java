package shaftwright.cli;

import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;

/**
 * Leaves a process to HotSpot's quick compiler. A run is over before the optimizing one has paid
 * for itself: on a demo workbook that one takes half of all processor time. No option can be set
 * for {@code java -jar}, but a running machine takes compiler directives by the diagnostic command
 * {@code Compiler.directives_add} (JEP 165).
 *
 * <p>The documented way to such commands is the platform's MBean server, which takes 130 ms to set
 * up in a cold process; behind it stands a class of the JDK that takes 8 ms and that the jar's
 * manifest opens to this one. Where anything of this is missing, all runs as it would without.
 */
final class QuickCompiler implements Callable<Boolean> {
    private static final String DIRECTIVE = "[{match: \"*.*\", c2: {Exclude: true}}]";
    private static final String COMMANDS = "com.sun.management.internal.DiagnosticCommandImpl";

    /** Loads the native library of the commands when it is initialized. */
    private static final String PROVIDER = "com.sun.management.internal.PlatformMBeanProviderImpl";

    private static final String HELPER = "sun.management.ManagementFactoryHelper";

    /**
     * Keeps everything that is compiled from now on to the quick compiler.
     *
     * @return whether the machine took it
     */
    @Override
    public Boolean call() {
        try {
            return takes(DIRECTIVE);
        } catch (ReflectiveOperationException | IOException | RuntimeException | LinkageError e) {
            // Another machine, or one without these classes: slower, but nothing else.
            return false;
        }
    }

    /** The command reads directives from a file and from nowhere else. */
    private static boolean takes(String directive)
            throws ReflectiveOperationException, IOException {
        File file = ownFile();
        // A run that fails at once may end in the midst of this.
        file.deleteOnExit();
        if (!file.createNewFile()) {
            return false;
        }
        try {
            try (FileOutputStream out = new FileOutputStream(file)) {
                out.write(directive.getBytes(StandardCharsets.US_ASCII));
            }
            return command("Compiler.directives_add \"" + file + "\"").contains("added");
        } finally {
            file.delete();
        }
    }

    /** The library's own names for temporary files are random, at 20 ms for a cold process. */
    private static File ownFile() {
        String name = "shaftwright-" + Long.toHexString(System.nanoTime()) + ".directives";
        return new File(System.getProperty("java.io.tmpdir"), name);
    }

    private static String command(String text) throws ReflectiveOperationException {
        Method management = Class.forName(HELPER).getDeclaredMethod("getVMManagement");
        management.setAccessible(true);
        Class.forName(PROVIDER);
        Class<?> commands = Class.forName(COMMANDS);
        Constructor<?> constructor =
                commands.getDeclaredConstructor(Class.forName("sun.management.VMManagement"));
        constructor.setAccessible(true);
        Method execute = commands.getDeclaredMethod("executeDiagnosticCommand", String.class);
        execute.setAccessible(true);
        return (String) execute.invoke(constructor.newInstance(management.invoke(null)), text);
    }
}

package shaftwright.jobs;

/** A number of things in words. */
public final class Count {
    private Count() {}

    /** {@code no errors}, {@code 1 error}, {@code 2 errors}. */
    public static String of(int count, String what) {
        return (count == 0 ? "no" : String.valueOf(count)) + " " + what + (count == 1 ? "" : "s");
    }
}

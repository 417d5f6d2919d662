package shaftwright.cli;

/** Entry point of the executable jar. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.out.println("shaftwright");
    }
}

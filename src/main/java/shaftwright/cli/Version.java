package shaftwright.cli;

/** The program's name and version. */
final class Version {
    private Version() {}

    static String text() {
        String version = Version.class.getPackage().getImplementationVersion();
        return "shaftwright " + (version == null ? "(not packaged)" : version);
    }
}

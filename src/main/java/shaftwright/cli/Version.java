package shaftwright.cli;

import picocli.CommandLine.IVersionProvider;

/** The program's name and version. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"shaftwright " + (version == null ? "(not packaged)" : version)};
    }
}

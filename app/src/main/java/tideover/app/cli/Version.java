package tideover.app.cli;

import picocli.CommandLine.IVersionProvider;

/** The program's version, from the jar. */
final class Version implements IVersionProvider {
    static String text() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "unpackaged" : version;
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Tideover " + text()};
    }
}

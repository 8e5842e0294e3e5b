package gloam.cli;

import picocli.CommandLine.IVersionProvider;

/** The version, as every command prints it. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {App.version()};
    }
}

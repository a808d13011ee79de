package haftline.cli;

import picocli.CommandLine.IVersionProvider;

/** What {@code --version} says. A constant, since a class run from a folder has no manifest. */
final class Version implements IVersionProvider {
    /** The version in pom.xml; a test holds the two together. */
    static final String NUMBER = "0.1.0-SNAPSHOT";

    @Override
    public String[] getVersion() {
        return new String[] {"haftline " + NUMBER};
    }
}

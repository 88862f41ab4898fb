package buzzout.cli;

import java.util.Optional;

/** The program's version, from its jar. */
final class Version {
    static final String NUMBER = Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
            .orElse("development");

    private Version() {}
}

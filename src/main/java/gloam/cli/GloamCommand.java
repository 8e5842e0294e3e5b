package gloam.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command: says what it can do. */
@Command(name = "gloam", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Plans nights of slow-film photography under the sky.",
        synopsisHeading = "Usage: ", customSynopsis = "gloam COMMAND [OPTIONS]",
        descriptionHeading = "%n", optionListHeading = "%nOptions:%n", commandListHeading = "%nCommands:%n",
        footer = {"", "Example:", "  gloam plan --trip demo-data/trip.yaml", "",
            "gloam COMMAND --help tells more. Without an installed gloam write java -jar target/gloam.jar."})
final class GloamCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}

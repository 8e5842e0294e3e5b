package gloam.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command: says what to do next. */
@Command(name = "gloam", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Plans nights of slow-film photography under the sky.",
        synopsisHeading = "Usage: ", customSynopsis = "gloam COMMAND [OPTIONS]",
        descriptionHeading = "%n", optionListHeading = "%nOptions:%n", commandListHeading = "%nCommands:%n",
        footerHeading = "%nExamples:%n", footer = {
            "gloam init --place 41.05,-2.15,1080 --zone Europe/Madrid", "gloam plan --trip trip.yaml"})
final class GloamCommand implements Runnable {

    private static final List<String> NEXT = List.of(
            "Gloam plans nights of slow-film photography under the sky: which night and place, where to point,",
            "which f-number, when to open and close the shutter, what the sheet will show.",
            "",
            "Begin with a trip file for your place (latitude, longitude, height) and zone:",
            "",
            "  gloam init --place 41.05,-2.15,1080 --zone Europe/Madrid",
            "",
            "It tells what to do next. gloam --help lists the commands, gloam COMMAND --help explains one.",
            "Without gloam on the path write java -jar target/gloam.jar in its place.");

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        PrintWriter out = spec.commandLine().getOut();
        NEXT.forEach(out::println);
    }
}

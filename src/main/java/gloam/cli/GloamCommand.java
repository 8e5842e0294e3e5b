package gloam.cli;

import java.util.List;

/** The program without a command: says what to do next. */
final class GloamCommand extends Command {

    private static final List<String> NEXT = List.of(
            "Gloam plans nights of slow-film photography under the sky: which night and place, where to "
            + "point,", "which f-number, when to open and close the shutter, what the sheet will show.",
            "",
            "Begin with a trip file for your place (latitude, longitude, height) and zone:",
            "",
            "  gloam init --place 41.05,-2.15,1080 --zone Europe/Madrid",
            "",
            "It shows what to do next. gloam --help lists the commands, gloam COMMAND --help explains one.",
            "Without gloam on the path write java -jar target/gloam.jar in its place.");

    GloamCommand() {
        super("gloam", "Plans nights of slow-film photography under the sky.",
                "gloam init --place 41.05,-2.15,1080 --zone Europe/Madrid", "gloam plan --trip trip.yaml");
        declare(spec -> spec.usageMessage().customSynopsis("gloam COMMAND [OPTIONS]"));
    }

    @Override
    public Integer call() {
        NEXT.forEach(out()::println);
        return App.DONE;
    }
}

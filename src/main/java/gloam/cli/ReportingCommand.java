package gloam.cli;

import gloam.gear.Site;
import gloam.planner.Progress;
import gloam.view.Origin;
import gloam.view.OutputFormat;
import gloam.view.Report;
import gloam.store.Input;
import gloam.units.BadInput;
import gloam.units.PlainText;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import picocli.CommandLine.Model.ArgSpec;

/** A command that answers with a report. */
abstract class ReportingCommand extends Command {

    private final OutputOptions output = group(new OutputOptions());

    private final SkyDataOptions skyData = group(new SkyDataOptions());

    private final Session session;

    ReportingCommand(Session session, String name, String description, String example) {
        super(name, description, example);
        this.session = session;
    }

    /** The answer to what the options ask. */
    abstract Report report(Session session);

    /** Gets the report and writes it wherever it is wanted. */
    @Override
    public final Integer call() {
        output.check();
        refuseTwoReaders();
        Report report = report(skyData.applied(session));
        output.refuseOver(inputs());
        output.write(report, origin(), session.columns(), out());
        return report.empty() && output.failIfEmpty() ? App.EMPTY : App.DONE;
    }

    /**
     * Refuses, before anything is changed, formats that a report of this kind cannot have and files that are
     * read.
     */
    final void refuseFormats(Report report) {
        output.check(report);
        output.refuseOver(inputs());
    }

    /** The program and the files that its options name. */
    private Origin origin() {
        return new Origin(App.version(), inputs(line().getCommandSpec().options()).stream()
                .flatMap(input -> input.fileName().stream()).distinct().toList());
    }

    /** What is named to be read. */
    final List<Input> inputs() {
        return inputs(line().getCommandSpec().args());
    }

    private static List<Input> inputs(List<? extends ArgSpec> args) {
        List<Input> inputs = new ArrayList<>();
        for (ArgSpec option : args) {
            Object value = option.getValue();
            (value instanceof List<?> several ? several : Collections.singletonList(value)).forEach(given -> {
                if (given instanceof Input input) {
                    inputs.add(input);
                }
            });
        }
        return inputs;
    }

    private void refuseTwoReaders() {
        if (inputs().stream().filter(Input::standard).count() > 1) {
            throw new BadInput("standard input can be read only once; name a file in all options but one");
        }
    }

    /** Tells something on the side. */
    final void note(String text) {
        err().println("note: " + PlainText.isolated(PlainText.of(text)));
    }

    /** Whether the report is wanted in a format. */
    final boolean wants(OutputFormat format) {
        return output.wants(format);
    }

    /** Shows the progress of a long computation. */
    final Progress progress(String what) {
        return session.progress(what, err());
    }

    /** The one site to use: the first if a trip has several, which a note says. */
    final Site oneOf(List<Site> sites) {
        return first(sites, this::note);
    }

    /** The same, with where the note goes. */
    static Site first(List<Site> sites, Consumer<String> notes) {
        if (sites.size() > 1) {
            notes.accept("the trip has " + sites.size() + " sites; this is for \"" + sites.get(0).name()
                    + "\"; choose with --site");
        }
        return sites.get(0);
    }
}

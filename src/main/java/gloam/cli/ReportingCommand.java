package gloam.cli;

import gloam.gear.Site;
import gloam.planner.Progress;
import gloam.report.OutputFormat;
import gloam.report.Report;
import gloam.units.PlainText;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A command that answers with a report. */
@Command(mixinStandardHelpOptions = true, synopsisHeading = "Usage: ", descriptionHeading = "%n",
        optionListHeading = "%nOptions:%n", footerHeading = "%nExample:%n", sortOptions = false,
        abbreviateSynopsis = true, versionProvider = Version.class)
abstract class ReportingCommand implements Callable<Integer> {

    @Mixin
    private OutputOptions output;

    @Mixin
    private SkyDataOptions skyData;

    @Spec
    private CommandSpec spec;

    private final Session session;

    ReportingCommand(Session session) {
        this.session = session;
    }

    /** The answer to what the options ask. */
    abstract Report report(Session session);

    /** Gets the report and writes it wherever it is wanted. */
    @Override
    public final Integer call() {
        output.check();
        Report report = report(skyData.applied(session));
        output.write(report, session.columns(), spec.commandLine().getOut());
        return report.empty() && output.failIfEmpty() ? App.EMPTY : App.DONE;
    }

    /** Refuses, before anything is changed, formats that a report of this kind cannot have. */
    final void refuseFormats(Report report) {
        output.check(report);
    }

    /** Tells something on the side. */
    final void note(String text) {
        spec.commandLine().getErr().println("note: " + PlainText.of(text));
    }

    /** Whether the report is wanted in a format. */
    final boolean wants(OutputFormat format) {
        return output.wants(format);
    }

    /** Who is told how far a long computation has come. */
    final Progress progress(String what) {
        return session.progress(what, spec.commandLine().getErr());
    }

    /** The one site to look at: the first one where a trip has several, which a note tells. */
    final Site oneOf(List<Site> sites) {
        if (sites.size() > 1) {
            note("the trip has " + sites.size() + " sites; this is for \"" + sites.get(0).name()
                    + "\"; choose with --site");
        }
        return sites.get(0);
    }
}

package gloam;

import gloam.cli.App;
import gloam.cli.Arguments;
import gloam.cli.Session;
import gloam.cli.StandardOutput;
import gloam.units.BadInput;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.time.Clock;

/** Starts Gloam with the real clock, data and streams. */
public final class Main {

    /** Picocli's own converters of dates, which Gloam reads by its own, cost 10 ms to load. */
    private static final String UNUSED_CONVERTERS = "java[.](time|sql)[.].*";

    private Main() {
    }

    /**
     * Runs the command line and leaves with its exit code; the version is told before anything else is
     * loaded.
     */
    public static void main(String[] args) {
        System.setProperty("picocli.converters.excludes", UNUSED_CONVERTERS);
        StandardOutput out = new StandardOutput(new FileOutputStream(FileDescriptor.out));
        PrintWriter text = out.writer();
        PrintWriter err = new StandardOutput(new FileOutputStream(FileDescriptor.err)).writer();
        int exit = args.length == 1 && args[0].equals("--version") ? version(text) : run(text, err, args);
        int told = out.exit(exit, err);
        err.flush();
        System.exit(told);
    }

    private static int version(PrintWriter out) {
        out.println(App.version());
        out.flush();
        return App.DONE;
    }

    private static int run(PrintWriter out, PrintWriter err, String... args) {
        Interruption interruption = new Interruption(err);
        Runtime.getRuntime().addShutdownHook(interruption);
        try {
            return App.run(Session.real(Clock.systemUTC(), System.getenv()), out, err, Arguments.typed(args));
        } catch (BadInput unreadable) {
            unreadable.problems().forEach(err::println);
            return App.BAD_INPUT;
        } finally {
            interruption.done = true;
        }
    }

    /** What is said when the run is ended from outside. */
    private static final class Interruption extends Thread {

        private final PrintWriter err;
        private volatile boolean done;

        Interruption(PrintWriter err) {
            super();
            this.err = err;
        }

        @Override
        public void run() {
            if (!done) {
                err.println("interrupted; no file was left half-written");
                err.flush();
            }
        }
    }
}

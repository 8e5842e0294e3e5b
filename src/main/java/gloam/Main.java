package gloam;

import gloam.cli.App;
import gloam.cli.Session;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;

/** Starts Gloam with the real clock, data and streams. */
public final class Main {

    private Main() {
    }

    /** Runs the command line and leaves with its exit code; the version is told before anything else is loaded. */
    public static void main(String[] args) {
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        int exit = App.DONE;
        if (args.length == 1 && args[0].equals("--version")) {
            out.println(App.version());
        } else {
            exit = App.run(Session.real(Clock.systemUTC(), System.getenv()), out, err, args);
        }
        out.flush();
        err.flush();
        System.exit(exit);
    }

    /** UTF-8 whatever the machine's own encoding is. */
    private static PrintWriter writer(FileDescriptor stream) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8));
    }
}

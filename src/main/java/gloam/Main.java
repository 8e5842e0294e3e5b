package gloam;

import gloam.cli.App;
import gloam.cli.Session;
import gloam.cli.StandardOutput;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.concurrent.atomic.AtomicBoolean;

/** Starts Gloam with the real clock, data and streams. */
public final class Main {

    private Main() {
    }

    /** Runs the command line and leaves with its exit code. */
    public static void main(String[] args) {
        StandardOutput out = new StandardOutput(new FileOutputStream(FileDescriptor.out));
        PrintWriter err = new StandardOutput(new FileOutputStream(FileDescriptor.err)).writer();
        AtomicBoolean done = new AtomicBoolean();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> tellInterrupted(done, err)));
        try {
            int exit = out.exit(App.run(Session.real(Clock.systemUTC(), System.getenv()), out.writer(), err, args), err);
            err.flush();
            done.set(true);
            System.exit(exit);
        } finally {
            done.set(true);
        }
    }

    private static void tellInterrupted(AtomicBoolean done, PrintWriter err) {
        if (!done.get()) {
            err.println("interrupted; files that were there are whole, as they were or as they were to be");
            err.flush();
        }
    }
}

package gloam.cli;

import gloam.answer.NewMoonNights;
import gloam.cli.Questions.Question;
import gloam.gear.Camera;
import gloam.gear.Coordinates;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.planner.Trip;
import gloam.store.FilmFile;
import gloam.store.TripDraft;
import gloam.units.BadInput;
import gloam.units.Nearest;
import gloam.units.Quantity;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Writes a trip file to begin with. */
final class InitCommand extends Command {

    /** A box of one's own making: an example, said to be one in the file. */
    private static final Camera EXAMPLE = new Camera("My camera", new Lens(120,
            FNumber.series(11, 16, 22, 32, 45, 64, 90), 0.9, Double.POSITIVE_INFINITY, 40, 0,
            Projection.RECTILINEAR, Vignetting.NONE), new Frame(80, 80), Duration.ofMinutes(5));
    private static final String FILM = "instant-mono-640";
    private static final int DAYS_AROUND_NEW_MOON = 3;

    private static final Map<String, Question> PLACE = Stream.of(
            new Question("--place", "Place as latitude, longitude, height, such as 41.05, -2.15, 1080: "),
            new Question("--lat", "Latitude, north positive, such as 41.05: "),
            new Question("--lon", "Longitude, east positive, such as -2.15: "),
            new Question("--zone", "Time zone, such as Europe/Madrid: "))
            .collect(Collectors.toMap(Question::option, Function.identity()));
    private static final Question FOCAL_LENGTH = new Question("--focal-length",
            "Focal length, such as 120 mm (empty for "
            + "an example camera): ", answer -> new Quantity(answer).in(Lens.FOCAL_LENGTH));
    private static final Question FRAME = new Question("--frame",
            "Frame, width x height, such as 80x80 mm: ");
    private static final Question F_NUMBERS = new Question("--f-number", "F-numbers, such as 11,16,22: ");

    private final Cell<Path> file = new Cell<>();

    private final PlaceOptions place = group(new PlaceOptions());

    private final Option<String> name = option("--name", "NAME", String.class,
            "What to call the place (default: ${DEFAULT-VALUE}).").byDefault("First site");

    private final Option<LocalDate> from = option("--from", "DATE", LocalDate.class,
            "Evening of the first night (default: of the week around the next new Moon).");

    private final Option<LocalDate> to = option("--to", "DATE", LocalDate.class,
            "Evening of the last night.");

    private final Option<String> film = option("--film", "NAME", String.class,
            "A built-in film (default: " + FILM + ").").completedBy(new Candidates.Films());

    private final Option<Integer> sheets = option("--sheets", "N", Integer.class,
            "Sheets to take along (default: ${DEFAULT-VALUE}).").byDefault("8");

    private final Option<Boolean> overwrite = flag("--overwrite", "Overwrite an existing file.");

    private final CameraOptions camera = group(new CameraOptions());

    private final Session session;

    InitCommand(Session session) {
        super("init",
                "Write a commented trip file for a place and a camera; on a terminal it asks for what is "
                + "missing.", "gloam init south.yaml --place 33.45S,70.55W,2400 --zone America/Santiago"
                        + " --focal-length 114mm --frame 4x5in --f-number f/8,f/11,f/16");
        declare(spec -> spec.addPositional(PositionalParamSpec.builder().paramLabel("FILE").arity("0..1")
                .type(Path.class).converters(Converters.of(Path.class).orElseThrow())
                .defaultValue("trip.yaml").getter(file).setter(file)
                .description("The trip file (default: ${DEFAULT-VALUE}).").build()));
        this.session = session;
    }

    @Override
    public Integer call() {
        refuseToOverwrite();
        OutputFile.checkPlace(file());
        Optional<Terminal> terminal = place.missing(false).isEmpty() ? Optional.empty() : session.terminal();
        if (terminal.isEmpty()) {
            return written();
        }
        Questions questions = new Questions(terminal.get(), this);
        ask(questions);
        return questions.result(this::written);
    }

    private int written() {
        place.refuseMissing("add ", false);
        OutputFile.write(file(), draft().text().getBytes(StandardCharsets.UTF_8), overwrite.given());
        tellNext(out());
        return App.DONE;
    }

    private Path file() {
        return file.value().orElseThrow();
    }

    private void refuseToOverwrite() {
        if (Files.exists(file()) && !overwrite.given()) {
            throw new BadInput("file \"" + file() + "\" already exists; give another name, or --overwrite");
        }
    }

    private TripDraft draft() {
        Coordinates where = place.coordinates();
        List<LocalDate> nights = nights(place.zone());
        FromOption.checked("--sheets", Trip.SHEETS, sheets.get());
        return new TripDraft(name.get().strip(), where, place.zone(), nights.get(0),
                nights.get(nights.size() - 1), camera.camera(Optional.of(EXAMPLE)), camera.given(),
                FromOption.of("--film", () -> builtIn(film.value().orElse(FILM))), sheets.get());
    }

    private List<LocalDate> nights(ZoneId zone) {
        if (!from.given() && to.given()) {
            throw new BadInput("no first night given; use --from DATE");
        }
        return from.value().map(first -> DateOptions.between(first,
                to.value().orElse(first.plusDays(2L * DAYS_AROUND_NEW_MOON))))
                .orElseGet(() -> NewMoonNights.after(session.ephemeris(), session.now(), zone,
                DAYS_AROUND_NEW_MOON)
                        .evenings());
    }

    private static String builtIn(String name) {
        List<String> names = FilmFile.names();
        return names.stream().filter(known -> known.equalsIgnoreCase(name)).findFirst().orElseThrow(() ->
                new BadInput("no built-in film is named \"" + name + "\"; " + Nearest.question(name, names)
                        .orElse("there are " + String.join(", ", names))
                        + " A film's own file is named in the trip file"));
    }

    private void tellNext(PrintWriter out) {
        out.println("Wrote " + file() + ". Change in it what is not yours, then");
        out.println("  gloam check --trip " + file());
        out.println("  gloam plan --trip " + file());
    }

    /** Asks for the place as far as it is missing, and for the camera unless it is given. */
    private void ask(Questions questions) {
        place.missing(false).stream().map(option -> option.replaceFirst(" .*", "")).map(PLACE::get)
                .forEach(questions::ask);
        if (!camera.given()) {
            questions.ask(FOCAL_LENGTH);
        }
        if (camera.given()) {
            questions.ask(FRAME);
            questions.ask(F_NUMBERS);
        }
    }
}

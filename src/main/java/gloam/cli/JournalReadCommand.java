package gloam.cli;

import gloam.answer.ReadQuestion;
import gloam.answer.ScanPart;
import gloam.answer.SheetReading;
import gloam.film.FilmStock;
import gloam.gear.Frame;
import gloam.gear.Site;
import gloam.journal.Entry;
import gloam.journal.Place;
import gloam.journal.ScanReading;
import gloam.planner.Trip;
import gloam.store.FileDigest;
import gloam.store.FilmFile;
import gloam.store.FrameFile;
import gloam.store.Input;
import gloam.store.JournalFile;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.view.JournalReadReport;
import gloam.view.Report;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Reads a scan of a spent sheet. */
final class JournalReadCommand extends ReportingCommand {

    private final Cell<Input> scan = new Cell<>();

    private final JournalOptions journal = group(new JournalOptions());

    private final Option<String> entry = option("--entry", "ENTRY", String.class,
            "The sheet's entry in the journal.").required();

    private final Option<ScanPart> crop = option("--crop", "X,Y,W,H", ScanPart.class,
            "The picture's left and upper edge, width and height in percent of the scan (default: found).")
            .readBy(ScanPart::of);

    private final Option<ScanPart> wedge = option("--wedge", "X,Y,W,H", ScanPart.class,
            "A grey step wedge on the scan, which shows the scanner's curve: left and upper edge, width and "
            + "height in percent.").readBy(ScanPart::of);

    private final Option<String> wedgeDensities = option("--wedge-densities", "LIST", String.class,
            "Densities of all its steps, the lightest first, such as 0.05,0.20,0.35.");

    private final Option<Boolean> negative = flag("--negative",
            "The scan shows a negative: trails are dark.");

    private final Option<Quantity> rollDeg = option("--roll", "DEG", Quantity.class,
            "Camera turned clockwise, as seen from behind, to 3° (default: the trip's wish's, else 0).");

    private final Option<Frame> frame = option("--frame", "WxH", Frame.class,
            "Width and height of the picture in mm (default: the trip's).");

    private final Option<Boolean> write = flag("--write",
            "Write the reading to the entry, in place of one before.");

    private final SiteOptions place = group(new SiteOptions());

    private final FilmOptions film = group(new FilmOptions());

    JournalReadCommand(Session session) {
        super(session, "read",
                "Read a scan of a spent sheet: the real aim, the real times of the shutter, the trails and "
                + "the tone on it; --out FILE.svg draws predicted trails over the scan.",
                "gloam journal read scan.jpg --entry 3 --journal journal.jsonl --trip trip.yaml "
                + "--out scan.svg");
        declare(spec -> spec.addPositional(PositionalParamSpec.builder().paramLabel("SCAN").arity("1")
                .type(Input.class).converters(Converters.of(Input.class).orElseThrow())
                .getter(scan).setter(scan)
                .description("A scan or photo of the sheet: JPEG, PNG or TIFF.").build()));
    }

    @Override
    Report report(Session session) {
        Input file = scan.value().orElseThrow(() -> new BadInput("no scan given; name an image"));
        Entry sheet = journal.read(this::note).lastWord(entry.get()).orElseThrow(() ->
                new BadInput("the journal has no entry \"" + entry.get() + "\" (--entry)"));
        Optional<Trip> trip = place.trip(session);
        FilmStock stock = film(trip, sheet);
        ReadQuestion question = new ReadQuestion(sheet, site(trip, sheet),
                frame.value().or(() -> trip.map(all -> all.camera().frame())).orElseThrow(() ->
                new BadInput("the journal does not keep the frame; add --frame WxH or --trip FILE")),
                roll(trip, sheet), stock, FrameFile.read(file, false).image(), crop.value(),
                wedge(), negative.given());
        SheetReading reading = read(session, file, question);
        JournalReadReport report = JournalReadReport.of(reading, file.shown(), Optional.empty(),
                session.now());
        if (!write.given()) {
            return report;
        }
        refuseFormats(report);
        ScanReading kept = reading.kept(file.fileName().orElseThrow(), FileDigest.sha256(file));
        JournalFile.Added added = FromOption.of("--journal", () -> JournalFile.correct(journal.file(),
                sheet.identity(), last -> last.cameOut(last.outcome().read(Optional.of(kept)))
                .writtenAt(session.now().truncatedTo(ChronoUnit.SECONDS))));
        return JournalReadReport.of(reading, file.shown(), Optional.of(new JournalReadReport.KeptRow(
                journal.file().toString(), added.already())), session.now());
    }

    private Optional<ReadQuestion.Wedge> wedge() {
        if (wedge.given() != wedgeDensities.given()) {
            throw new BadInput(wedge.given() ? "--wedge needs the densities of its steps; add "
                    + "--wedge-densities 0.05,0.20,…" : "--wedge-densities needs the place of the wedge; "
                    + "add --wedge X,Y,W,H");
        }
        return wedge.value().map(part -> FromOption.of("--wedge-densities", () ->
                ReadQuestion.Wedge.of(part, wedgeDensities.get())));
    }

    private static SheetReading read(Session session, Input file, ReadQuestion question) {
        try {
            return SheetReading.of(session.ephemeris(), session.stars().stars(), question);
        } catch (BadInput bad) {
            throw bad.from(file.shown());
        }
    }

    /** The trip's site of the entry's name, or the place given. */
    private Site site(Optional<Trip> trip, Entry sheet) {
        if (!place.given()) {
            throw new BadInput("the journal keeps too little of the site; add --trip FILE, or --place PLACE "
                    + "and --zone ZONE");
        }
        return place.site(trip, sheet.exposed().place().map(Place::name), this::note);
    }

    /** The film as given, else the trip's or a built-in one of the entry's name. */
    private FilmStock film(Optional<Trip> trip, Entry sheet) {
        String name = sheet.exposed().film();
        return film.required(Stream.concat(trip.stream().flatMap(all -> Stream.concat(Stream.of(all.film()),
                all.wishes().stream().flatMap(wish -> wish.film().stream()))), FilmFile.builtIns().stream())
                .filter(known -> known.name().equalsIgnoreCase(name)).findFirst());
    }

    private Angle roll(Optional<Trip> trip, Entry sheet) {
        return rollDeg.value().map(deg ->
                Angle.ofDegrees(FromOption.checked("--roll", ShotOptions.ROLL, deg)))
                .or(() -> trip.flatMap(all -> all.wishes().stream().filter(wish -> sheet.wish()
                .filter(wish.name()::equals).isPresent()).map(wish -> wish.aim().roll()).findFirst()))
                .orElse(Angle.ZERO);
    }
}

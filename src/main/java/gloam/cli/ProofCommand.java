package gloam.cli;

import gloam.answer.ContactSheet;
import gloam.answer.SheetProof;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.light.GroundLight;
import gloam.planner.Trip;
import gloam.proof.Raster;
import gloam.sheet.Sheet;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.view.ContactReport;
import gloam.view.ProofReport;
import gloam.view.Report;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Computes the picture of a sheet before it is spent. */
final class ProofCommand extends ReportingCommand {

    private final SiteOptions place = group(new SiteOptions());

    private final TripCameraOptions camera = group(new TripCameraOptions());

    private final FilmOptions film = group(new FilmOptions());

    private final FittedFilm fitted = group(new FittedFilm());

    private final ShotOptions shot = group(new ShotOptions());

    private final Option<Integer> sizePx = option("--size", "PIXELS", Integer.class,
            "Pixels along the frame's longer side (default: ${DEFAULT-VALUE}).").byDefault("1000");

    private final Option<Quantity> groundReflectance = option("--ground", "SHARE", Quantity.class,
            "Show lit ground that reflects this share of the light, "
            + "such as 0.1 for grass or 0.8 for snow (default: a black outline).");

    private final Option<FilmStock.Kind> as = option("--as", "KIND", FilmStock.Kind.class,
            "Show a negative film as its positive print or as the negative (default: positive).")
            .completedBy(new Candidates.FilmKinds()).byDefault("positive");

    private final Option<Boolean> contact = flag("--contact",
            "Show small proofs side by side: each f-number at half, once and twice the time, and the ±.");

    ProofCommand(Session session) {
        super(session, "proof",
                "Compute the picture on the sheet: as PNG (--out FILE.png), or as SVG with names, pole and "
                + "directions; list what shows on it.",
                "gloam proof --trip demo-data/trip.yaml --azimuth 0 --altitude 41 --from 2027-02-08T21:00"
                + " --lasts 3h --out sheet.png");
    }

    @Override
    Report report(Session session) {
        Optional<TripFile.Reading> read = place.reading(session);
        Optional<Trip> trip = camera.of(read.map(TripFile.Reading::trip));
        Site site = oneOf(place.sites(trip));
        Camera taken = camera.camera(trip.map(Trip::camera));
        FilmStock stock = fitted.film(film.required(trip.map(Trip::film)), read, this::note);
        if (as.get() == FilmStock.Kind.NEGATIVE && stock.kind() == FilmStock.Kind.POSITIVE) {
            throw new BadInput(stock.name() + " is a positive film; leave out --as negative");
        }
        Raster raster = FromOption.of("--size", () -> Raster.of(taken.frame(), sizePx.get()));
        Sheet sheet = new Sheet(site, stock, List.of(shot.setting(site, taken, false, session)));
        if (contact.given()) {
            return ContactReport.of(FromOption.of("--contact",
                    () -> ContactSheet.of(session.ephemeris(), sheet,
                    taken.lens().fNumbers(), session.stars().stars())), session.now());
        }
        OptionalDouble reflectance = groundReflectance.value().map(share ->
                OptionalDouble.of(FromOption.checked("--ground", GroundLight.REFLECTANCE, share)))
                .orElse(OptionalDouble.empty());
        return ProofReport.of(SheetProof.of(session.ephemeris(), sheet, reflectance, session.stars().stars(),
                raster, as.get()), session.now());
    }
}

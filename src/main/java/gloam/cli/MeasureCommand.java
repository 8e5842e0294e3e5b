package gloam.cli;

import gloam.answer.MeasuredFrame;
import gloam.answer.Measurement;
import gloam.frame.FrameSettings;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.store.CalibrationFile;
import gloam.store.FrameFile;
import gloam.store.Input;
import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.view.MeasureReport;
import gloam.view.Report;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Measures the sky with frames of a digital camera. */
final class MeasureCommand extends ReportingCommand {

    private final Cell<List<Input>> frames = new Cell<>();

    private final FrameOptions taken = group(new FrameOptions());

    private final Option<Boolean> linear = flag("--linear",
            "The frame's levels are proportional to light: a raw frame developed without a curve.");

    private final Option<Path> calibrate = option("--calibrate", "FILE", Path.class,
            "Write the camera's calibration; needs --sky-mag-arcsec2.");

    private final Option<Quantity> skyMagArcsec2 = option("--sky-mag-arcsec2", "MAG", Quantity.class,
            "What a meter showed of the sky in the middle of the frame, V mag/arcsec².");

    private final SiteOptions place = group(new SiteOptions());

    MeasureCommand(Session session) {
        super(session, "measure",
                "Measure the night sky with frames of a digital camera: its brightness by direction, where "
                + "the camera pointed, and how both compare with the computed sky.",
                "gloam measure demo-data/frame.jpg --trip demo-data/trip.yaml");
        declare(spec -> spec.addPositional(PositionalParamSpec.builder().paramLabel("FRAME").arity("1..*")
                .type(List.class).auxiliaryTypes(Input.class)
                .converters(Converters.of(Input.class).orElseThrow()).getter(frames).setter(frames)
                .description("Frames of one camera: JPEG, PNG or TIFF.").build()));
    }

    @Override
    Report report(Session session) {
        List<Input> given = frames.value().orElseThrow(() ->
                new BadInput("no frame given; name an image, or several"));
        if (calibrate.given() != skyMagArcsec2.given() || calibrate.given() && given.size() > 1) {
            throw new BadInput("--calibrate FILE and --sky-mag-arcsec2 MAG go together, with one frame; "
                    + "give both");
        }
        calibrate.value().ifPresent(file -> FromOption.run("--calibrate", () -> OutputFile.checkPlace(file)));
        Site site = oneOf(place.sites(place.trip(session)));
        FrameSettings settings = taken.settings(site.zone());
        Measurement found = Measurement.of(session.ephemeris(), site, session.stars().stars(),
                given.stream().map(frame -> question(frame, settings, site)).toList());
        calibrate.value().ifPresent(file -> write(file, found));
        return MeasureReport.of(found, session.now());
    }

    private Supplier<MeasuredFrame.Question> question(Input frame, FrameSettings settings, Site site) {
        return () -> {
            FrameFile.Read read = FrameFile.read(frame, linear.given());
            return MeasuredFrame.Question.of(read.name(), read.image(), read.data(), settings, site.zone());
        };
    }

    private void write(Path file, Measurement found) {
        double known = FromOption.checked("--sky-mag-arcsec2", SkyReading.BRIGHTNESS, skyMagArcsec2.get());
        FromOption.run("--calibrate", () -> {
            OutputFile.refuseOver(file, inputs());
            OutputFile.write(file, CalibrationFile.text(found.calibration(known, SkyReading.USUAL_SPREAD_MAG))
                    .getBytes(StandardCharsets.UTF_8));
        });
        note("the camera's calibration is in " + file);
    }
}

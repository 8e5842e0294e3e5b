package gloam.planner;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.ephemeris.StarCatalogue;
import gloam.exposure.FilmPlane;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Sets the wishes of a trip against its nights and sites: the same trip always gives the same plan. */
public final class Planner {

    private static final double PREVIEW_AGREES_MAG = 0.5;
    private static final int SECONDS_A_MINUTE = 60;

    private final Ephemeris ephemeris;
    private final StarField stars;
    private final Progress progress;

    /** Plans with the positions of an ephemeris, which several threads may ask at once, and the stars of a catalogue. */
    public Planner(Ephemeris ephemeris, StarCatalogue stars) {
        this(ephemeris, StarField.of(stars.stars()), Progress.NONE);
    }

    /** The same with any stars. */
    Planner(Ephemeris ephemeris, List<Star> stars) {
        this(ephemeris, StarField.of(stars), Progress.NONE);
    }

    private Planner(Ephemeris ephemeris, StarField stars, Progress progress) {
        this.ephemeris = ephemeris;
        this.stars = stars;
        this.progress = progress;
    }

    /** The same that tells of every night looked at. */
    public Planner watchedBy(Progress told) {
        return new Planner(ephemeris, stars, told);
    }

    /** The timetable of a trip: every night of it, and on each a window or a refusal for every wish. */
    public Plan plan(Trip trip) {
        List<List<Evening>> evenings = evenings(trip);
        int changeoverMin = (int) Math.ceil(trip.camera().changeover().toMillis() / 1000.0 / SECONDS_A_MINUTE);
        int[] repeats = trip.wishes().stream().mapToInt(Wish::repeat).toArray();
        Timetable.Choice<Shot> choice = new Timetable(repeats, trip.sheets() - trip.spent(), changeoverMin).choose(evenings.stream()
                .map(sites -> sites.parallelStream().map(evening -> evening.candidates(trip)).toList()).toList());
        Refusals refusals = new Refusals(trip, stars, changeoverMin, evenings, choice.nights());
        List<Plan.NightPlan> nights = new ArrayList<>();
        int sheet = trip.spent() + 1;
        for (int night = 0; night < evenings.size(); night++) {
            Timetable.Night<Shot> chosen = choice.nights().get(night);
            int site = chosen.exposed().isEmpty() ? mostPromising(evenings.get(night)) : chosen.site();
            Evening evening = evenings.get(night).get(site);
            nights.add(new Plan.NightPlan(evening.night(), windows(trip, evening, chosen.exposed(), sheet),
                    refusals.of(night, site), Note.of(trip, evening.night()),
                    evening.findings().isEmpty() ? List.of() : evening.findings().get(0).sky().course()));
            sheet += chosen.exposed().size();
        }
        return new Plan(trip, nights, cautions(trip, choice));
    }

    private List<List<Evening>> evenings(Trip trip) {
        List<SiteEvening> asked = SiteEvening.all(trip.dates(), trip.sites());
        Runnable done = progress.each(asked.size());
        Map<LocalDate, List<Evening>> byDate = asked.parallelStream().map(at -> {
            Evening evening = Evening.of(trip, ephemeris, stars, at.date(), at.site());
            done.run();
            return evening;
        }).collect(Collectors.groupingBy(evening -> evening.night().date(), TreeMap::new,
                Collectors.toList()));
        return List.copyOf(byDate.values());
    }

    private static int mostPromising(List<Evening> evenings) {
        return IntStream.range(0, evenings.size()).boxed()
                .max(Comparator.comparingDouble((Integer site) -> evenings.get(site).promise())
                        .thenComparing(Comparator.reverseOrder())).orElseThrow();
    }

    private List<Plan.Window> windows(Trip trip, Evening evening, List<Candidate<Shot>> exposed, int firstSheet) {
        return IntStream.range(0, exposed.size()).mapToObj(number -> {
            WindowFinder.Finding finding = evening.findings().get(exposed.get(number).wish());
            return new ShotFigures(trip, finding.wish(), finding.sky(), ephemeris, stars)
                    .window(firstSheet + number, exposed.get(number));
        }).toList();
    }

    private static List<Caution> cautions(Trip trip, Timetable.Choice<Shot> choice) {
        List<Caution> cautions = new ArrayList<>();
        if (choice.bound() > choice.worth() * (1 + 1e-9)) {
            cautions.add(new Caution.NotProvenBest(choice.worth() / choice.bound()));
        }
        if (trip.forecast().isEmpty()) {
            cautions.add(new Caution.NoForecast());
        }
        trip.preview().ifPresent(preview -> trip.sites().forEach(site -> {
            double frameMag = FilmPlane.luminanceOfFrame(trip.camera().lens(), preview.fNumber(), preview.iso(),
                    preview.exposure().toNanos() * 1e-9).magArcsec2();
            if (Math.abs(frameMag - site.darkSkyMagArcsec2()) > PREVIEW_AGREES_MAG) {
                cautions.add(new Caution.PreviewDisagrees(frameMag, site.darkSkyMagArcsec2(), site.name()));
            }
        }));
        return cautions;
    }
}

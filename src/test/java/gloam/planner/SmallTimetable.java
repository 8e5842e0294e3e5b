package gloam.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** A small random trip: at most 3 nights, 2 sites, 4 wishes, 6 offers a site and night, 2 cameras. */
record SmallTimetable(int[] repeats, int sheets, int perNight, int[] changeoverMin, int wayNights,
        List<List<List<Offer>>> offers) {

    /** So that nights end at different hours. */
    private static final int STEP_MIN = 25;

    static SmallTimetable of(long seed) {
        Random random = new Random(seed);
        int[] repeats = IntStream.generate(() -> 1 + random.nextInt(2)).limit(2 + random.nextInt(3))
                .toArray();
        int siteCount = 1 + random.nextInt(2);
        int[] changeoverMin = random.ints(1 + random.nextInt(2), 0, 3).map(steps -> STEP_MIN * steps)
                .toArray();
        List<List<List<Offer>>> nights = new ArrayList<>();
        for (int night = 0; night < 1 + seed % 3; night++) {
            List<List<Offer>> sites = new ArrayList<>();
            for (int site = 0; site < siteCount; site++) {
                sites.add(evening(random, repeats.length, changeoverMin.length));
            }
            nights.add(sites);
        }
        return new SmallTimetable(repeats, 1 + random.nextInt(5), 1 + random.nextInt(4), changeoverMin,
                random.nextInt(3), nights);
    }

    private static List<Offer> evening(Random random, int wishes, int cameras) {
        List<Offer> evening = new ArrayList<>();
        for (int i = random.nextInt(7); i > 0; i--) {
            int openMin = STEP_MIN * random.nextInt(12);
            int closeMin = openMin + STEP_MIN * (1 + random.nextInt(6));
            double value = 1 + random.nextInt(4) * 0.5;
            evening.add(Offer.at(random.nextInt(wishes), random.nextInt(cameras), openMin, closeMin,
                    Gain.of(value, Chance.CERTAIN, 0)));
        }
        return evening;
    }

    TimetableValue bruteForce() {
        return bruteForce(0, repeats, sheets, -1, 0);
    }

    private TimetableValue bruteForce(int night, int[] left, int sheetsLeft, int before, int at) {
        if (night == offers.size()) {
            return TimetableValue.NOTHING;
        }
        TimetableValue best = bruteForce(night + 1, left, sheetsLeft, before, at);
        for (int site = 0; site < offers.get(night).size(); site++) {
            boolean reached = before < 0 || fit(before, at, night, site);
            boolean moved = before >= 0 && at != site;
            for (int subset = 1; reached && subset < 1 << offers.get(night).get(site).size(); subset++) {
                best = best.max(value(site, subset, night, moved, left, sheetsLeft));
            }
        }
        return best;
    }

    /** A move takes so many nights. */
    boolean fit(int night, int site, int later, int laterSite) {
        return site == laterSite || later - night > wayNights;
    }

    private TimetableValue value(int place, int subset, int night, boolean moved, int[] left,
            int sheetsLeft) {
        int[] stillLeft = left.clone();
        List<Offer> chosen = new ArrayList<>();
        List<Offer> site = offers.get(night).get(place);
        for (int i = 0; i < site.size(); i++) {
            if ((subset >> i & 1) == 1) {
                Offer offer = site.get(i);
                boolean overlaps = chosen.stream().anyMatch(other ->
                        other.camera() == offer.camera()
                                && other.firstOpenMin() < close(offer) + changeoverMin[offer.camera()]
                                && offer.firstOpenMin() < close(other) + changeoverMin[offer.camera()]);
                boolean again = chosen.stream().anyMatch(other -> other.wish() == offer.wish());
                if (overlaps || again || --stillLeft[offer.wish()] < 0) {
                    return TimetableValue.NOTHING;
                }
                chosen.add(offer);
            }
        }
        if (chosen.size() > Math.min(sheetsLeft, perNight)) {
            return TimetableValue.NOTHING;
        }
        return TimetableValue.of(night, moved, chosen)
                .plus(bruteForce(night + 1, stillLeft, sheetsLeft - chosen.size(), night, place));
    }

    static int close(Offer offer) {
        return offer.firstOpenMin() + offer.durationMin();
    }

    Timetable.Choice choice() {
        return new Timetable(repeats, sheets, perNight, changeoverMin).moving(new Moves() {
            @Override
            public boolean stays(int night, int site, int later, int laterSite) {
                return site == laterSite;
            }

            @Override
            public boolean fit(int night, int site, int later, int laterSite) {
                return SmallTimetable.this.fit(night, site, later, laterSite);
            }
        }).choose(offers);
    }
}

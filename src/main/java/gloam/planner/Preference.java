package gloam.planner;

/** What is preferred among exposures that come out as wished with the same chance. */
final class Preference {

    /** Limits between which more stars are better, in mag. */
    private static final double LEAST_LIMIT_MAG = 1;
    private static final double FAINTEST_LIMIT_MAG = 6;
    /**
     * Light at f/1 of a night sky under a full Moon, as the logarithm to base 2 of lx, and how much darker it
     * gets.
     */
    private static final double GREY_LOG2_LX = -7;
    private static final double DARKER_STOPS = 6;

    /** The light of the night sky preferred. */
    enum Light { LESS, MORE, ANY }

    private Preference() {
    }

    /**
     * By what an exposure is preferred to others with the same chance: nearer to the tone aimed at, nearer to
     * level, more stars, higher in the sky, a darker sky or more moonlight; each counts ten times the next.
     */
    static int of(WishNight night, int number, double toneStops, int openMin, int closeMin) {
        int middleMin = openMin + (closeMin - openMin) / 2;
        int level = night.aiming().aim() instanceof Aim.Follow follow && follow.levelWithin().isPresent()
                ? tenth(1 - Math.abs(night.aiming().leanDeg(middleMin)) / follow.levelWithin().get()
                .degrees()) : 0;
        double log2Lx = night.light().log2Lx(number, middleMin);
        int near = night.wish().tone() instanceof Wish.Tone.Near aim
                ? tenth(1 - Math.abs(toneStops - aim.stops()) / Chance.MOST_MISS_STOPS) : 0;
        double limitMag = night.with().equatorial().get(number).magnitude(toneStops, log2Lx);
        int stars = tenth((limitMag - LEAST_LIMIT_MAG) / (FAINTEST_LIMIT_MAG - LEAST_LIMIT_MAG));
        int high = tenth(night.aiming().direction(middleMin).altitude().degrees() / 90);
        double skyStops = log2Lx + night.with().log2Squared(number);
        int moonlight = switch (night.wish().sky().light()) {
            case LESS -> tenth((GREY_LOG2_LX - skyStops) / DARKER_STOPS);
            case MORE -> tenth(1 - (GREY_LOG2_LX - skyStops) / DARKER_STOPS);
            case ANY -> 0;
        };
        return 10_000 * near + 1000 * level + 100 * stars + 10 * high + moonlight;
    }

    private static int tenth(double share) {
        return (int) Math.max(0, Math.min(9, Math.floor(10 * share)));
    }
}

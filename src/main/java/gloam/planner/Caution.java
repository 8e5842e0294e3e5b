package gloam.planner;

/** What a timetable leaves open or takes for granted. */
public sealed interface Caution {

    /**
     * Not every timetable was tried.
     *
     * @param share the least that this one is worth, as a share of the best, 0 to 1
     */
    record NotProvenBest(double share) implements Caution { }

    /** No forecast was given, so every window counts with the same chance of a clear sky, in percent. */
    record NoForecast(double clearPercent) implements Caution { }

    /**
     * The sky of a site is that of a preview frame, in mag/arcsec².
     *
     * @param site the site's name
     */
    record SkyByPreview(double frameMag, String site) implements Caution { }

    /**
     * A preview frame shows another sky than a site states.
     *
     * @param frameMag the sky of the frame, in mag/arcsec²
     * @param siteMag  the sky of the site, in mag/arcsec²
     * @param site     the site's name
     */
    record PreviewDisagrees(double frameMag, double siteMag, String site) implements Caution { }

    /**
     * Hardly a star records on a sheet of the dark sky whose wish does not say how many must.
     *
     * @param wish     the wish's name
     * @param recorded how many record
     * @param asked    how many it could ask for
     */
    record FewStars(String wish, int recorded, int asked) implements Caution { }
}

package gloam.light;

/** What lights the sky, in the order in which it is added up; each entry has its model. */
public enum LightSource {

    /** The moonless night sky of the site. */
    DARK(new DarkSky()),
    /** Scattered moonlight. */
    MOON(new MoonGlow()),
    /** Scattered sunlight. */
    TWILIGHT(new TwilightGlow());

    private final LightModel model;

    LightSource(LightModel model) {
        this.model = model;
    }

    LightModel model() {
        return model;
    }
}

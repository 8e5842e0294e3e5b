package gloam.light;

import java.util.List;

/** What lights the sky, in the order in which it is added up; each entry has its model. */
public enum LightSource {

    /** Zodiacal light. */
    ZODIACAL(new ZodiacalLight()),
    /** Faint stars: the Milky Way. */
    STARS(new Starlight()),
    /** The glow of the towns that are known. */
    TOWNS(new TownGlow()),
    /** The rest of a moonless night: airglow, and the light of towns that no direction is known of. */
    AIRGLOW(new Airglow(List.of(ZODIACAL.model, STARS.model, TOWNS.model))),
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

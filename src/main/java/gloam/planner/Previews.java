package gloam.planner;

import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.light.SkyBrightness;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Digital frames of a trip's dark, moonless skies that looked right. A frame sets the sky of a site that does
 * not state it.
 *
 * @param everywhere  the frame for sites that have none of their own
 * @param bySite      frames made at sites, by the sites' names
 * @param statedSkies names of the sites whose dark sky is stated
 */
public record Previews(Optional<Preview> everywhere, Map<String, Preview> bySite, Set<String> statedSkies) {

    /** No frames. */
    public static final Previews NONE = new Previews(Optional.empty(), Map.of(), Set.of());

    /** Copies map and set. */
    public Previews {
        bySite = Map.copyOf(bySite);
        statedSkies = Set.copyOf(statedSkies);
    }

    /** The frame that shows the sky of a site. */
    public Optional<Preview> at(Site site) {
        return Optional.ofNullable(bySite.get(site.name())).or(() -> everywhere);
    }

    /** The sky of a site as its frame shows it, seen through the lens that the film is exposed through. */
    public Optional<SkyBrightness> sky(Site site, Lens lens) {
        return at(site).map(frame -> frame.sky(lens));
    }

    /** Whether a frame, and not a stated value, gives the sky of a site. */
    public boolean sets(Site site) {
        return at(site).isPresent() && !statedSkies.contains(site.name());
    }
}

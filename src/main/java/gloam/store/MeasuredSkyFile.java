package gloam.store;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.gear.Skyline;
import gloam.units.Angle;
import gloam.units.BadInput;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Reads the sky over a site from what {@code measure} writes as JSON. */
public final class MeasuredSkyFile {

    private MeasuredSkyFile() {
    }

    /**
     * The site with the measurements of its sky: a flat skyline, no towns.
     *
     * @throws BadInput with the place of the first error
     */
    public static Site read(Input file) {
        Saved saved = Bound.read(new Tree.Text(file.shown(), 1, file.text()), Saved.class);
        SavedSite site = saved.site.orElseThrow();
        return new Site(site.name, Angle.ofDegrees(site.latitudeDeg), Angle.ofDegrees(site.longitudeDeg),
                site.heightM, site.zone, site.darkSkyMagArcsec2, site.extinctionMag, Skyline.FLAT)
                .measured(saved.sky.orElseThrow().stream().map(SavedReading::known).toList());
    }

    /** What is read of it; it says more. */
    @JsonIgnoreProperties(ignoreUnknown = true)
    private record Saved(Optional<SavedSite> site, Optional<List<SavedReading>> sky) {

        private Saved {
            if (site.isEmpty() || sky.filter(readings -> !readings.isEmpty()).isEmpty()) {
                throw new BadInput("holds no measurement of the sky. Give what gloam measure --format json "
                        + "wrote of a frame that shows some.");
            }
        }
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    private record SavedSite(String name, double latitudeDeg, double longitudeDeg, double heightM,
            ZoneId zone, double darkSkyMagArcsec2, double extinctionMag) {

        private SavedSite {
            Site.LATITUDE.check(latitudeDeg);
            Site.LONGITUDE.check(longitudeDeg);
            Site.HEIGHT.check(heightM);
            Site.DARK_SKY.check(darkSkyMagArcsec2);
            Site.EXTINCTION.check(extinctionMag);
        }
    }

    private record SavedReading(OffsetDateTime at, double azimuthDeg, double altitudeDeg, double magArcsec2,
            double errorMag) {

        private SavedReading {
            Skyline.AZIMUTH.check(azimuthDeg);
            SkyReading.ALTITUDE.check(altitudeDeg);
            SkyReading.BRIGHTNESS.check(magArcsec2);
            SkyReading.SPREAD.check(errorMag);
        }

        private SkyReading known() {
            return new SkyReading(at.toInstant(), Angle.ofDegrees(azimuthDeg), Angle.ofDegrees(altitudeDeg),
                    magArcsec2, errorMag);
        }
    }
}

package gloam.ephemeris.orekit;

import gloam.ephemeris.Refraction;
import gloam.gear.Site;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.bodies.GeodeticPoint;
import org.orekit.bodies.OneAxisEllipsoid;
import org.orekit.frames.TopocentricFrame;

/**
 * A site on the ellipsoid: what is computed once for it. Vectors stand in the Earth's own axes.
 *
 * @param site       the site
 * @param positionKm its place from the Earth's centre
 * @param east       unit vector to the east
 * @param north      unit vector to the north
 * @param up         unit vector along the vertical
 * @param refraction that of the air over it
 */
record Ground(Site site, Vector3D positionKm, Vector3D east, Vector3D north, Vector3D up,
              Refraction refraction) {

    static Ground of(Site site, OneAxisEllipsoid earth) {
        GeodeticPoint point =
                new GeodeticPoint(site.latitude().radians(), site.longitude().radians(), site.heightM());
        TopocentricFrame frame = new TopocentricFrame(earth, point, site.name());
        return new Ground(site, earth.transform(point).scalarMultiply(1e-3), frame.getEast(),
                frame.getNorth(), frame.getZenith(), Refraction.ofHeight(site.heightM()));
    }
}

package gloam.ephemeris.orekit;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.ParseException;
import java.util.regex.Pattern;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.orekit.bodies.CelestialBodies;
import org.orekit.bodies.LazyLoadedCelestialBodies;
import org.orekit.data.DataLoader;
import org.orekit.data.DataProvider;
import org.orekit.data.DataProvidersManager;
import org.orekit.errors.OrekitException;
import org.orekit.frames.Frame;
import org.orekit.time.TimeScales;

/** One file of data in memory: Orekit's loaders read a file anew for every few weeks of dates. */
final class DataFile implements DataProvider {

    private static final String RESOURCES = "/gloam/ephemeris/";

    private final String name;
    private final byte[] content;

    DataFile(String name, byte[] content) {
        this.name = name;
        this.content = content;
    }

    /** A file of the jar. */
    static DataFile builtIn(String name) {
        try (InputStream in = DataFile.class.getResourceAsStream(RESOURCES + name)) {
            return new DataFile(name, in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What matches this file's name and no other. */
    String pattern() {
        return Pattern.quote(name);
    }

    /** A manager that knows this file alone. */
    DataProvidersManager manager() {
        DataProvidersManager manager = new DataProvidersManager();
        manager.addProvider(this);
        return manager;
    }

    /** The bodies of the solar system as this file, in JPL's binary form, has them. */
    CelestialBodies bodies(TimeScales scales, Frame gcrf) {
        LazyLoadedCelestialBodies bodies = new LazyLoadedCelestialBodies(manager(), scales, gcrf);
        bodies.addDefaultCelestialBodyLoader(pattern());
        return bodies;
    }

    @Override
    public boolean feed(Pattern supported, DataLoader visitor, DataProvidersManager manager) {
        if (!visitor.stillAcceptsData() || !supported.matcher(name).matches()) {
            return false;
        }
        try {
            visitor.loadData(new ByteArrayInputStream(content), name);
            return true;
        } catch (IOException | ParseException e) {
            throw new OrekitException(e, LocalizedCoreFormats.SIMPLE_MESSAGE, e.getMessage());
        }
    }
}

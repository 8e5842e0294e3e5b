import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.DateComponents;
import org.orekit.time.OffsetModel;
import org.orekit.time.TimeScales;
import org.orekit.time.TimeVectorFunction;
import org.orekit.utils.IERSConventions;

/**
 * Writes the table of the celestial pole of the jar: Orekit's IERS 2010 series at noon TT of every day.
 *
 * <p>Big-endian ints: days from J2000.0 to the first node, number of nodes, then per node X, Y and s + XY/2
 * in 1e-11 rad. Usage: java -cp OREKIT_AND_HIPPARCHUS_JARS CelestialPole.java OUTPUT
 */
public final class CelestialPole {

    private static final int FIRST_DAY = -12;
    private static final int LAST_DAY = 21948;
    private static final double UNIT_RAD = 1e-11;

    public static void main(String[] args) throws IOException {
        TimeScales scales = TimeScales.of(List.of(new OffsetModel(new DateComponents(2017, 1, 1), 37)),
                (conventions, timeScales) -> List.of());
        TimeVectorFunction pole = IERSConventions.IERS_2010.getXYSpXY2Function(scales);
        AbsoluteDate j2000 = scales.getJ2000Epoch();
        try (DataOutputStream out = new DataOutputStream(
                new BufferedOutputStream(Files.newOutputStream(Path.of(args[0]))))) {
            out.writeInt(FIRST_DAY);
            out.writeInt(LAST_DAY - FIRST_DAY + 1);
            for (int day = FIRST_DAY; day <= LAST_DAY; day++) {
                for (double valueRad : pole.value(j2000.shiftedBy(day * 86400.0))) {
                    out.writeInt((int) Math.rint(valueRad / UNIT_RAD));
                }
            }
        }
    }
}

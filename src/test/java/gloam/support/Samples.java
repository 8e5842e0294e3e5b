package gloam.support;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;

/**
 * Seeded samples for property tests.
 *
 * <p>Neighbouring seeds give unrelated samples. Every sample is named by its seed; {@code -Dsamples.seed=N}
 * replays that one alone.
 */
public final class Samples {

    private static final long FIRST_SEED = 20270206;

    private Samples() {
    }

    /** That many samples, each drawn from its own seeded source; for {@code @MethodSource}. */
    public static <T> Stream<Named<T>> of(int count, Function<RandomGenerator, T> draw) {
        return seeds(count).mapToObj(seed -> {
            T value = draw.apply(new SplittableRandom(seed));
            return Named.of("seed " + seed + ": " + value, value);
        });
    }

    private static LongStream seeds(int count) {
        return Optional.ofNullable(Long.getLong("samples.seed"))
                .map(LongStream::of)
                .orElse(LongStream.range(FIRST_SEED, FIRST_SEED + count));
    }
}

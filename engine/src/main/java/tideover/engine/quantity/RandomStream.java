package tideover.engine.quantity;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Random numbers that depend on nothing but seed, year and purpose, so that threads and order of work cannot change a
 * result. The three are mixed by the finaliser of SplitMix64 (Steele, Lea &amp; Flood 2014, OOPSLA) into the seed of a
 * xoroshiro generator.
 */
public final class RandomStream {
    /** What the numbers are for; its position is part of the key, so new purposes go at the end. */
    public enum Purpose {
        DAILY_WEATHER,
        WITHIN_DAY_SUN,
        RESAMPLED_YEARS,
        TEST,
        DOUBTS
    }

    private final UniformRandomProvider source;
    private final ZigguratSampler.NormalizedGaussian normal;

    private RandomStream(UniformRandomProvider source) {
        this.source = source;
        this.normal = ZigguratSampler.NormalizedGaussian.of(source);
    }

    public static RandomStream of(long seed, int year, Purpose purpose) {
        long key = mix(mix(mix(seed) + year) + purpose.ordinal());
        return new RandomStream(RandomSource.XO_RO_SHI_RO_128_PP.create(new long[] {mix(key + 1), mix(key + 2)}));
    }

    /** Standard normal. */
    public double nextNormal() {
        return normal.sample();
    }

    /** Uniform in [0, 1). */
    public double nextUniform() {
        return source.nextDouble();
    }

    /** Uniform from 0 to {@code bound - 1}. */
    public int nextIndex(int bound) {
        return source.nextInt(bound);
    }

    private static long mix(long input) {
        long z = input + 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}

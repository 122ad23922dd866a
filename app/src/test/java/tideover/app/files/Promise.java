package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/**
 * What every reader of files promises, whatever it is given: a result or problems, soon, the same each time. A problem is full,
 * begins with the file it is about, is not endless, and holds nothing that a screen could not show.
 */
final class Promise {
    private static final long MOST_CPU_S = 5;

    /** Handed out and mostly given back; what is held at one time is far less. */
    private static final long MOST_MEMORY_BYTES = 2_000_000_000;

    private static final int LONGEST_PROBLEM = 4200;

    private Promise() {}

    /** The result; empty where problems were told. Anything else that is thrown breaks the promise. */
    static <T> Optional<T> of(Supplier<T> reading) {
        Outcome<T> first = outcome(reading);
        // the first one may have waited for classes to be loaded, and for Jazzer to change them
        Outcome<T> second = inBounds(reading);
        assertThat(second.equals(first)).as("the same when read again").isTrue();
        return first.result();
    }

    /** The same of one reading, where a second would take long. */
    static <T> Optional<T> once(Supplier<T> reading) {
        return inBounds(reading).result();
    }

    private record Outcome<T>(Optional<T> result, List<Problem> problems) {}

    private static <T> Outcome<T> inBounds(Supplier<T> reading) {
        com.sun.management.ThreadMXBean thread = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long cpuBefore = thread.getCurrentThreadCpuTime();
        long bytesBefore = thread.getCurrentThreadAllocatedBytes();
        Outcome<T> outcome = outcome(reading);
        assertThat(thread.getCurrentThreadCpuTime() - cpuBefore)
                .as("nanoseconds of one reading")
                .isLessThan(MOST_CPU_S * 1_000_000_000);
        assertThat(thread.getCurrentThreadAllocatedBytes() - bytesBefore)
                .as("bytes taken by one reading")
                .isLessThan(MOST_MEMORY_BYTES);
        return outcome;
    }

    private static <T> Outcome<T> outcome(Supplier<T> reading) {
        try {
            return new Outcome<>(Optional.of(reading.get()), List.of());
        } catch (InputProblems told) {
            assertThat(told.problems()).isNotEmpty().allSatisfy(Promise::isTold);
            return new Outcome<>(Optional.empty(), List.copyOf(told.problems()));
        }
    }

    private static void isTold(Problem problem) {
        String sentence = problem.sentence();
        assertThat(problem.where()).as(sentence).isNotBlank();
        assertThat(problem.found()).as(sentence).isNotBlank();
        assertThat(problem.expected()).as(sentence).isNotBlank();
        assertThat(sentence).hasSizeLessThan(LONGEST_PROBLEM);
        assertThat(sentence.codePoints().noneMatch(Reading::cannotBeShown))
                .as(sentence)
                .isTrue();
    }
}

package tideover.engine.answer;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tideover.engine.load.Load;
import tideover.engine.rig.Rig;
import tideover.engine.rig.StartChain;
import tideover.engine.rig.StartEvent;
import tideover.engine.rig.StartVerdict;
import tideover.engine.rig.StartVerdict.Link;
import tideover.engine.why.Verdict;

/**
 * A start that may come, and what the rig says to it.
 *
 * @param verdict        from a full store at {@link #WARM_DEG_C}
 * @param fillNeededWarm lowest filling of the well that the volts follow, 0..1, from which it holds at {@link #WARM_DEG_C};
 *                       0 where any does, infinity where none
 * @param fillNeededCold the same at {@link #COLD_DEG_C}
 */
public record JudgedStart(StartEvent event, StartVerdict verdict, double fillNeededWarm, double fillNeededCold) {
    public static final double WARM_DEG_C = 25;
    public static final double COLD_DEG_C = 0;

    private static final double FULL = 1;

    /** What breaks stands before what holds with less left. */
    private static final Comparator<Link> BY_WEAKNESS =
            Comparator.comparing((Link link) -> link.verdict() != Verdict.FAIL).thenComparingDouble(Link::ratio);

    static List<JudgedStart> of(Rig rig, List<Load> loads) {
        return StartChain.events(rig, loads).stream()
                .map(event -> new JudgedStart(
                        event,
                        StartChain.judge(rig, event, FULL, WARM_DEG_C),
                        StartChain.fillNeeded(rig, event, WARM_DEG_C),
                        StartChain.fillNeeded(rig, event, COLD_DEG_C)))
                .toList();
    }

    /** The link that breaks, or else the one with the least left; of several the one nearer to the plug. */
    public Optional<Link> weakest() {
        return verdict.links().stream().min(BY_WEAKNESS);
    }

    /** The start that leaves least; of several alike the first, which is of essential loads alone where there is one. */
    static Optional<JudgedStart> hardest(List<JudgedStart> starts) {
        return starts.stream()
                .filter(start -> start.weakest().isPresent())
                .min(Comparator.comparing(start -> start.weakest().orElseThrow(), BY_WEAKNESS));
    }
}

package tideover.engine.search;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.RuleBook;
import tideover.engine.rig.Site;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Bench;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.Price;
import tideover.engine.wiring.Terms;

/** Makes one rig of parts by itself: put together, put before every rule, wired and priced. Not for several threads at once. */
public final class Pricing {
    private final List<Load> loads;
    private final Site site;
    private final Bench bench;
    private final Allowances allowances;
    private final Terms terms;

    public Pricing(List<Load> loads, Site site, Bench bench, Allowances allowances, Terms terms) {
        this.loads = List.copyOf(loads);
        this.site = site;
        this.bench = bench;
        this.allowances = allowances;
        this.terms = terms;
    }

    /** A rig that keeps every rule, wired, with its price and no number; null where the parts make no rig or it breaks one. */
    public @Nullable Priced of(List<Chosen> chosen) {
        Rig rig = Assembly.of(chosen).rig();
        if (rig == null || fails(RuleBook.partFindings(rig, site))) {
            return null;
        }
        Build build = bench.wire(rig);
        return fails(build.findings()) || fails(RuleBook.loadFindings(build.rig(), loads))
                ? null
                : new Priced(0, build.rig(), Price.of(build, loads, allowances, terms));
    }

    private static boolean fails(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.verdict() == Verdict.FAIL);
    }
}

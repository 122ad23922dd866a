package tideover.engine.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.KeptBound;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.Proof;
import tideover.engine.proof.Prover;
import tideover.engine.proof.StormProof;
import tideover.engine.proof.Trace;
import tideover.engine.proof.TraceChecker;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Aids;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.RuleBook;
import tideover.engine.rig.Site;
import tideover.engine.search.BestShare;
import tideover.engine.search.Candidates;
import tideover.engine.search.Offers;
import tideover.engine.search.Owned;
import tideover.engine.search.Rated;
import tideover.engine.search.Screen;
import tideover.engine.search.Search;
import tideover.engine.search.Shelf;
import tideover.engine.search.Shortlist;
import tideover.engine.site.Place;
import tideover.engine.site.Room;
import tideover.engine.site.SnowCover;
import tideover.engine.site.Station;
import tideover.engine.site.Weather;
import tideover.engine.site.WeatherSource;
import tideover.engine.sun.PanelMount;
import tideover.engine.sun.SunYear;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;
import tideover.engine.wiring.Bench;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.Price;
import tideover.engine.wiring.Stock;

/** The one door to the engine: commands, pages and studies ask here. */
public final class Advisor {
    /** Where mains are of 50 Hz cables are sold by square millimetres, elsewhere by gauge. */
    private static final double METRIC_HERTZ = 50;

    private final Question question;
    private final Options options;
    private final Skies skies;
    private final Progress progress;
    private final Workers workers;
    private final SunYear sun;
    private final Sky sky;
    private @Nullable Sky confirming;

    /** By the seed of their sky; each keeps what its years make of panels and batteries. */
    private final Map<Long, Prover> provers = new HashMap<>();

    /** What the confirming years said of each rig asked about, by its id. */
    private final Map<String, CarriedShare> confirmed = new HashMap<>();

    /** The same of their storm starts. */
    private final Map<String, CarriedShare> stormsConfirmed = new HashMap<>();

    private Advisor(Question question, Options options, Progress progress) {
        this(question, options, new Skies(), progress);
    }

    private Advisor(Question question, Options options, Skies skies, Progress progress) {
        this.question = question;
        this.skies = skies;
        this.options = options;
        this.progress = progress;
        this.workers = Workers.of(options.threads(), progress::stop);
        this.sun = SunYear.at(
                question.place().latDeg(),
                question.place().lonDeg(),
                question.place().zoneH());
        progress.at("weather", 0);
        this.sky = kept(options.seed(), options.years());
    }

    /** Weather, what it puts on the panels, and how warm it leaves the store's room. */
    record Sky(Weather weather, PlaneWeather plane, Series storeRoomDegC, long seed) {}

    /** The cheapest rig that meets the question's target, fully simulated and confirmed. */
    public static Answer size(Question question, Options options, Progress progress) {
        return new Advisor(question, options, progress).size();
    }

    /** The same for one who asks again and again. */
    public static Answer size(Question question, Options options, Skies skies, Progress progress) {
        return new Advisor(question, options, skies, progress).size();
    }

    /** Buying in two steps: the best share for a first sum, then the best for what is added to it. Whole cents. */
    public static Steps steps(Question question, long nowCents, long laterCents, Options options, Progress progress) {
        return new Advisor(question, options, progress).steps(nowCents, laterCents);
    }

    /** One given rig, fully simulated. */
    public static Answer prove(Question question, Rig rig, Options options, Progress progress) {
        return new Advisor(question, options, progress)
                .prove(bench(question).wire(rig).rig());
    }

    /** The same for one who asks again and again. */
    public static Answer prove(Question question, Rig rig, Options options, Skies skies, Progress progress) {
        return new Advisor(question, options, skies, progress)
                .prove(bench(question).wire(rig).rig());
    }

    /** What can be told of a rig at once; quick where the skies are known. */
    public static Glimpse glimpse(Question question, Rig rig, Options options, Skies skies) {
        return new Advisor(question, options, skies, Progress.SILENT).glimpse(rig);
    }

    private Glimpse glimpse(Rig given) {
        Build build = bench(question).wire(given);
        Rig rig = build.rig();
        Screen screen = new Screen(
                sky.plane(),
                sky.weather().years(),
                question.place().meanSolarNoonHour(),
                options.stepsPerHour(),
                question.asked(),
                keptBound(prover(sky)),
                question.loads());
        return new Glimpse(
                rig,
                Price.of(build, question.loads(), question.allowances(), question.terms())
                        .totalCents(),
                findings(rig, build).stream()
                        .filter(finding -> finding.verdict() == Verdict.FAIL)
                        .map(Finding::sentence)
                        .toList(),
                screen.atMost(rig),
                screen.isExact(rig));
    }

    /** One rig in several places. */
    public static Places places(
            Question question, Rig rig, List<Station> stations, Options options, Progress progress) {
        List<Places.At> rows = new ArrayList<>();
        for (Station station : stations) {
            double lowestDegC = station.climate().lowestDegC() - Places.COLDER_K;
            boolean snow = question.saysSnow() ? question.snow() : SnowCover.freezes(station.climate());
            Question there = question.at(
                    station.place(), new WeatherSource.Generated(station.place(), station.climate()), lowestDegC, snow);
            rows.add(new Advisor(there, options, progress).at(station, rig));
        }
        return new Places(question, options, rig, rows);
    }

    private Places.At at(Station station, Rig given) {
        Build build = bench(question).wire(given);
        progress.at("proving", 0);
        Proof proof = prover(sky).prove(build.rig(), question.loads(), question.outage());
        checked(proof.worst(), build.rig());
        List<String> broken = findings(build.rig(), build).stream()
                .filter(finding -> finding.verdict() == Verdict.FAIL)
                .map(Finding::rule)
                .distinct()
                .toList();
        return new Places.At(station, question.lowestDegC(), question.snow(), proof, broken);
    }

    /** One outage of a rig, step by step; the start counts hours through all weather years. */
    public static Trace trace(Question question, Rig rig, int startHour, Options options) {
        Advisor advisor = new Advisor(question, options, Progress.SILENT);
        Rig wired = bench(question).wire(rig).rig();
        return checked(advisor.prover(advisor.sky).trace(wired, question.loads(), question.outage(), startHour), wired);
    }

    /** Weather, plane, cell and panel, hour by hour, for a panel of {@code ratedW} with the usual coefficients. */
    public static WeatherSheet weather(
            Place place, WeatherSource source, PanelMount mount, boolean snow, Options options, double ratedW) {
        SunYear sun = SunYear.at(place.latDeg(), place.lonDeg(), place.zoneH());
        Weather weather = source.weather(options.seed(), options.years());
        return WeatherSheet.of(weather, PlaneWeather.of(weather, sun, mount, snow), ratedW);
    }

    private Answer size() {
        Search search = new Search(
                sky.plane(),
                sky.weather().years(),
                question.place().meanSolarNoonHour(),
                options.stepsPerHour(),
                question.asked(),
                keptBound(prover(sky)),
                workers);
        // The confirming years are drawn beside it: neither knows of the other.
        Offers[] offers = new Offers[1];
        workers.forEach(2, piece -> {
            if (piece == 0) {
                offers[0] = offers();
            } else if (question.weather().canDrawAgain()) {
                confirming = kept(options.confirmSeed(), options.confirmYears());
            }
        });
        Search.Judge judge = new Search.Judge() {
            @Override
            public boolean holds(Rated rated) {
                return Advisor.this.holds(rated.rig());
            }

            @Override
            public OptionalDouble walkedShare(Rig rig, double threshold) {
                return prover(sky).shareFrom(threshold, rig, question.loads(), question.outage());
            }
        };
        Shortlist list = search.shortlist(offers[0], question.loads(), judge, new SearchTold(progress));
        Rated winner = list.winner();
        List<Way> ways = ways(list);
        boolean meets = winner != null || (!question.medical() && ways.stream().anyMatch(Way::meets));
        ProvenRig proven = winner == null ? null : proven(winner.rig(), confirm(winner.rig()));
        Beside beside = beside(list, proven);
        if (options.byMass()) {
            progress.at("by mass", 0);
            beside = beside.with(search.massFront(offers[0], question.loads(), judge));
        }
        return answer(list, proven, meets, beside, ways);
    }

    private Steps steps(long nowCents, long laterCents) {
        BestShare best = new BestShare(
                sky.plane(),
                sky.weather().years(),
                question.place().meanSolarNoonHour(),
                options.stepsPerHour(),
                question.asked(),
                keptBound(prover(sky)),
                workers,
                question.loads(),
                (rig, threshold) -> prover(sky).shareFrom(threshold, rig, question.loads(), question.outage()));
        Rated firstFound = best.of(offers(Owned.NOTHING, nowCents), new SearchTold(progress));
        Steps.Step first = step(firstFound);
        Steps.Step second = null;
        if (first != null) {
            Rated found = best.of(offers(Owned.of(first.rig().build()), laterCents), new SearchTold(progress));
            second = found == null
                    ? null
                    : found.rig().id().equals(first.rig().rig().id())
                            ? new Steps.Step(first.rig(), found.price(), first.meets())
                            : step(found);
        }
        Rated whole = best.of(offers(Owned.NOTHING, nowCents + laterCents), new SearchTold(progress));
        Steps.Whole together = null;
        if (whole != null) {
            CarriedShare share = prover(sky).share(whole.rig(), question.loads(), question.outage());
            together = new Steps.Whole(
                    whole,
                    share,
                    confirm(whole.rig()),
                    share.share() >= question.asked().targetShare() && holds(whole.rig()));
        }
        Steps.Met met = first != null && first.meets()
                ? Steps.Met.AT_ONCE
                : second != null && second.meets() ? Steps.Met.LATER : Steps.Met.NEVER;
        ProvenRig last = second == null ? null : second.rig();
        return new Steps(
                question,
                options,
                sky.weather().years(),
                nowCents,
                laterCents,
                first,
                second,
                together,
                met,
                question.weather().words(),
                Cautions.of(question, last, sky.weather(), List.of()));
    }

    private Steps.@Nullable Step step(@Nullable Rated found) {
        if (found == null) {
            return null;
        }
        ProvenRig proven = proven(found.rig(), confirm(found.rig()));
        return new Steps.Step(proven, found.price(), meets(proven));
    }

    /** Of each kind of way the best. */
    private List<Way> ways(Shortlist list) {
        progress.at("other ways", 0);
        List<Way> ways = new ArrayList<>();
        double meanDegC = sky.storeRoomDegC().mean();
        list.byRoute().forEach(one -> ways.add(Ways.ofRig(one, question, meanDegC)));
        ways.addAll(enginesAlone().ways());
        ways.addAll(WithoutPower.of(question, bench(question), new WithoutPower.Walks() {
            @Override
            public double share(Rig rig, List<Load> loads) {
                return prover(sky).share(rig, loads, question.outage()).share();
            }

            @Override
            public boolean holds(Rig rig) {
                return Advisor.this.holds(rig);
            }
        }));
        return Ways.best(ways, question.budgetCents());
    }

    /** Every engine by itself, and every vehicle with an inverter, judged on the question's outages. */
    public static EngineAlone enginesAlone(Question question, Options options, Progress progress) {
        return new Advisor(question, options, progress).enginesAlone();
    }

    private EngineAlone enginesAlone() {
        return EngineAlone.of(
                question, bench(question), site(question), options.stepsPerHour(), new EngineAlone.Walks() {
                    @Override
                    public double share(Rig rig) {
                        return prover(sky)
                                .share(rig, question.loads(), question.outage())
                                .share();
                    }

                    @Override
                    public boolean holds(Rig rig) {
                        return Advisor.this.holds(rig);
                    }
                });
    }

    /** What the loads that switch themselves need at least, whatever aids stand beside a rig. */
    private KeptBound keptBound(Prover by) {
        return KeptBound.easiest(question.rigs().aids().stream()
                .map(set -> by.keptBound(Aids.served(set, question.loads()), question.outage()))
                .toList());
    }

    /** Every rig that can be put together: what {@code size} numbers. */
    public static Shelf shelf(Question question) {
        return Shelf.of(question.parts(), question.rigs(), question.loads());
    }

    /** Every rig that keeps the rules and the budget, cheapest first: for small lists of parts. */
    public static Candidates candidates(Question question) {
        return Candidates.of(
                question.parts(),
                question.rigs(),
                question.loads(),
                site(question),
                bench(question),
                question.allowances(),
                question.terms(),
                question.budgetCents());
    }

    /** Those that keep the rules, priced as they are asked for. */
    private Offers offers() {
        return offers(Owned.NOTHING, question.budgetCents());
    }

    private Offers offers(Owned owned, long budgetCents) {
        return offers(owned, OptionalLong.of(budgetCents));
    }

    private Offers offers(Owned owned, OptionalLong budgetCents) {
        return Offers.of(
                Shelf.of(question.parts(), question.rigs(), question.loads(), owned),
                question.loads(),
                site(question),
                bench(question),
                question.allowances(),
                question.terms(),
                budgetCents,
                workers);
    }

    /** Where the question's rigs are wired. */
    private static Bench bench(Question question) {
        boolean metric = question.loads().stream()
                .anyMatch(load -> load.supply().isAc() && load.supply().hertz() == METRIC_HERTZ);
        return new Bench(
                Stock.of(question.smallParts(), metric),
                question.laying(),
                question.loads(),
                question.outage(),
                site(question).coldDegC());
    }

    private static Site site(Question question) {
        boolean engine = question.outage().help().stream().anyMatch(help -> help instanceof Help.Engine);
        return new Site(
                question.lowestDegC(), question.sleptIn(), question.batteryRoom(), null, engine, question.outage());
    }

    /** The same with the temperatures of the store's room. */
    private Site proofSite() {
        return site(question).with(Room.extremes(sky.storeRoomDegC(), ModelYear.ALL_MONTHS));
    }

    /** Whether a rig that the screening let through meets the target in the full walk and on other years. */
    private boolean holds(Rig rig) {
        Outage outage = question.asked();
        // Only nice-to-have loads that draw on the store can part the walk from the screening. Where somebody's health
        // hangs on the answer the screening is not taken at its word.
        boolean walkedAgain = outage.keepBack() < 1 || question.medical();
        if (walkedAgain && prover(sky).share(rig, question.loads(), outage).share() < outage.targetShare()) {
            return false;
        }
        if (fallsInStorms(prover(sky), rig)) {
            return false;
        }
        CarriedShare confirmed = confirm(rig);
        return (confirmed == null || confirmed.share() >= outage.targetShare()) && holdsInOtherStorms(rig);
    }

    /** Whether storms do more than take the grid and the share on their starts is below the target. */
    private boolean fallsInStorms(Prover prover, Rig rig) {
        Outage outage = question.asked();
        return Prover.isStormy(question.loads(), outage)
                && prover.stormShare(rig, question.loads(), outage).share() < outage.targetShare();
    }

    private Answer prove(Rig rig) {
        CarriedShare confirmed = confirm(rig);
        ProvenRig proven = proven(rig, confirmed);
        boolean meets = meets(proven);
        return answer(null, proven, meets, beside(proven, meets), List.of());
    }

    private boolean meets(ProvenRig proven) {
        double target = question.asked().targetShare();
        StormProof storm = proven.proof().storm();
        CarriedShare confirmed = proven.confirmed();
        return proven.proof().share().share() >= target
                && (storm == null || storm.share().share() >= target)
                && (confirmed == null || confirmed.share() >= target)
                && proven.findings().stream().noneMatch(f -> f.verdict() == Verdict.FAIL)
                && holdsInOtherStorms(proven.rig());
    }

    /** What stands beside the winner; where there is none, beside the nearest miss. */
    private Beside beside(Shortlist list, @Nullable ProvenRig winner) {
        Besides besides = besides();
        Rated from = winner != null ? list.winner() : nearest(list);
        boolean meets = winner != null;
        beside(0);
        Choice choice = besides.choice(list);
        beside(0.1);
        Steadiness steadiness = besides.steadiness(list);
        beside(0.5);
        CarriedShare lean = winner == null ? null : besides.lean(winner.rig());
        beside(0.7);
        NextStep step = from == null ? null : besides.nextStep(from, meets, true, this::holds);
        beside(1);
        return new Beside(choice, steadiness, lean, step, null);
    }

    private void beside(double share) {
        progress.at("beside it", share);
    }

    private static @Nullable Rated nearest(Shortlist list) {
        return Stream.concat(list.unconfirmed().stream(), list.misses().stream())
                .findFirst()
                .orElse(null);
    }

    private Beside beside(ProvenRig given, boolean meets) {
        Rated from =
                new Rated(0, given.rig(), given.price(), given.proof().share().share());
        Besides besides = besides();
        beside(0);
        CarriedShare lean = besides.lean(given.rig());
        beside(0.3);
        NextStep step = Besides.keepsRules(given) ? besides.nextStep(from, meets, false, this::holds) : null;
        beside(1);
        return new Beside(null, null, lean, step, null);
    }

    private Besides besides() {
        Besides.Drawing drawing = new Besides.Drawing() {
            @Override
            public Sky first() {
                return sky;
            }

            @Override
            public Sky sky(long seed) {
                return Advisor.this.sky(seed, options.years());
            }

            @Override
            public Prover prover() {
                return Advisor.this.prover(sky);
            }

            @Override
            public KeptBound kept(Prover by) {
                return keptBound(by);
            }

            @Override
            public Prover alone(Sky under) {
                return newProver(under, Workers.of(1, progress::stop));
            }
        };
        return new Besides(question, options, workers, drawing, bench(question), proofSite());
    }

    /** Storm starts are walked on other years only where somebody's health hangs on the answer. */
    private boolean holdsInOtherStorms(Rig rig) {
        CarriedShare other = question.medical() ? confirmStorms(rig) : null;
        return other == null || other.share() >= question.asked().targetShare();
    }

    /** Null where these years cannot be drawn again, or where storms only take the grid. */
    private @Nullable CarriedShare confirmStorms(Rig rig) {
        Prover prover = confirmingProver();
        return prover == null || !Prover.isStormy(question.loads(), question.outage())
                ? null
                : stormsConfirmed.computeIfAbsent(
                        rig.id(), id -> prover.stormShare(rig, question.loads(), question.outage()));
    }

    private @Nullable CarriedShare confirm(Rig rig) {
        Prover prover = confirmingProver();
        return prover == null
                ? null
                : confirmed.computeIfAbsent(rig.id(), id -> prover.share(rig, question.loads(), question.outage()));
    }

    /** Of other years; null where the weather cannot be drawn again. */
    private @Nullable Prover confirmingProver() {
        if (!question.weather().canDrawAgain()) {
            return null;
        }
        progress.at("confirming", 0);
        if (confirming == null) {
            confirming = kept(options.confirmSeed(), options.confirmYears());
        }
        return prover(confirming);
    }

    private ProvenRig proven(Rig rig, @Nullable CarriedShare confirmed) {
        progress.at("proving", 0);
        Proof proof = prover(sky).prove(rig, question.loads(), question.outage());
        checked(proof.worst(), rig);
        checked(proof.median(), rig);
        if (proof.storm() != null) {
            checked(proof.storm().worst(), rig);
        }
        Build build = bench(question).wire(rig);
        return new ProvenRig(
                rig,
                build,
                Price.of(build, question.loads(), question.allowances(), question.terms()),
                findings(rig, build),
                proof,
                confirmed,
                JudgedStart.of(rig, question.loads()),
                prover(sky)
                        .doubts(
                                rig,
                                question.loads(),
                                question.outage(),
                                proof.share(),
                                GeneralDoubts.with(question, rig)),
                StandbyCost.of(rig, sky.storeRoomDegC().mean()),
                question.medical() ? MedicalNote.of(question, rig, worstCase(rig, proof, confirmed)) : List.of());
    }

    private List<Finding> findings(Rig rig, Build build) {
        List<Finding> findings = new ArrayList<>(RuleBook.findings(rig, question.loads(), proofSite()));
        findings.addAll(
                Aids.findings(rig.chosen(), question.loads(), question.outage().hours()));
        findings.addAll(build.findings());
        return findings;
    }

    private WorstCase worstCase(Rig rig, Proof proof, @Nullable CarriedShare confirmed) {
        return WorstCase.of(proof, confirmed, question.medical() ? confirmStorms(rig) : null, options.confirmYears());
    }

    /** No trace leaves here that the independent checker has not passed. */
    private static Trace checked(Trace trace, Rig rig) {
        List<String> faults = TraceChecker.faults(trace, rig);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the simulation broke its own books: " + faults.get(0));
        }
        return trace;
    }

    private Answer answer(
            @Nullable Shortlist shortlist, @Nullable ProvenRig rig, boolean meets, Beside beside, List<Way> ways) {
        List<String> cautions = new ArrayList<>(Cautions.of(question, rig, sky.weather(), ways));
        List<Chosen> aids =
                new ArrayList<>(rig == null ? List.of() : Aids.in(rig.rig().chosen()));
        ways.stream().filter(Way::meets).forEach(way -> aids.addAll(Aids.in(way.chosen())));
        cautions.addAll(Cautions.ofAids(question, aids));
        return new Answer(
                question,
                options,
                sky.weather().years(),
                shortlist,
                rig,
                beside,
                meets,
                question.weather().words(),
                cautions,
                Notes.of(question, options, sky.weather(), sky.plane(), rig),
                ways);
    }

    private Sky kept(long seed, int years) {
        Skies.Key key = new Skies.Key(
                question.weather(),
                question.place(),
                question.mount(),
                question.snow(),
                question.batteryRoom(),
                seed,
                years);
        return skies.sky(key, () -> sky(seed, years));
    }

    private Sky sky(long seed, int years) {
        Weather weather = question.weather().weather(seed, years);
        return new Sky(
                weather,
                PlaneWeather.of(weather, sun, question.mount(), question.snow()),
                Room.degC(question.batteryRoom(), weather),
                seed);
    }

    private Prover prover(Sky under) {
        return provers.computeIfAbsent(under.seed(), seed -> newProver(under, workers));
    }

    private Prover newProver(Sky under, Workers by) {
        return new Prover(
                under.weather(),
                under.plane(),
                under.storeRoomDegC(),
                question.place().meanSolarNoonHour(),
                options.stepsPerHour(),
                under.seed(),
                by);
    }
}

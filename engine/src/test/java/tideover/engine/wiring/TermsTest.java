package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Condition;
import tideover.engine.part.Fitting;
import tideover.engine.part.Inverter;
import tideover.engine.part.Listing;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.Selling;
import tideover.engine.part.Selling.VolumePrice;
import tideover.engine.part.SmallPart;
import tideover.engine.part.Tool;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;

/** Final prices: tax, shipping, volume prices, and the bound on them. */
class TermsTest {
    private static final Allowances ALLOWANCES = new Allowances(1_00, 10_00, 100_00);
    private static final List<Load> LAMP = List.of(WiringKit.lamp("lamp", 20));
    private static final Build WIRED =
            WiringKit.wire(WiringKit.full(), WiringKit.corded("lamp", 4), WiringKit.rig(1, 2), LAMP.get(0));
    private static final List<String> SELLERS = List.of("", "Tarnwhistle", "Ebbe and Sons", "Quillbarn");

    private static Listing listing(String id, long cents, Selling selling) {
        return Invented.listing(id, cents, 1).with(selling);
    }

    private static Selling at(String seller) {
        return new Selling(seller, List.of(), 0, true, "");
    }

    /** Battery 300.00, inverter 90.00, controller 40.00, and so many panels. */
    private static Rig rig(Listing panel, int panels) {
        Invented invented = new Invented(1);
        return assembled(List.of(
                new Chosen(invented.battery("B", 1000, 300_00), 1),
                new Chosen(invented.inverter("I", 5, 90_00), 1),
                new Chosen(invented.controller("C", 20, 40_00), 1),
                new Chosen(new Panel(panel, 100, 22, -0.004, -0.003, 45), panels)));
    }

    private static Rig assembled(List<Chosen> chosen) {
        Rig rig = Assembly.of(chosen).rig();
        if (rig == null) {
            throw new IllegalStateException("no rig");
        }
        return rig;
    }

    private static Price price(Rig rig, Terms terms) {
        return Price.of(new Build(rig, WIRED.circuit(), WIRED.partsList(), false), LAMP, ALLOWANCES, terms);
    }

    /** 8.875 % of 430.00 + 2 x 80.02 = 590.04 is 52.36605: 52.37. The allowance of 100.00 is not taxed. */
    @Test
    void taxIsRoundedOnceOnTheWhole() {
        Price price = price(rig(listing("P", 80_02, Selling.PLAIN), 2), new Terms(88_750, Map.of()));
        assertThat(price.partsCents()).isEqualTo(590_04);
        assertThat(price.taxCents()).isEqualTo(52_37);
        assertThat(price.totalCents()).isEqualTo(742_41);
    }

    /** 5 % of .10 is half a cent, of .09 less; on large sums it is as exact. */
    @Test
    void halfACentIsRoundedUp() {
        Terms terms = new Terms(50_000, Map.of());
        assertThat(terms.taxCents(9)).isZero();
        assertThat(terms.taxCents(10)).isEqualTo(1);
        assertThat(terms.taxCents(29)).isEqualTo(1);
        assertThat(terms.taxCents(30)).isEqualTo(2);
        for (long cents : new long[] {1, 999_999, 1_000_000, 1_000_001, 123_456_789_012_345L}) {
            for (int ppm : new int[] {0, 1, 72_500, 88_750, 1_000_000}) {
                assertThat(new Terms(ppm, Map.of()).taxCents(cents))
                        .as("%d ppm of %d", ppm, cents)
                        .isEqualTo(BigDecimal.valueOf(cents)
                                .multiply(BigDecimal.valueOf(ppm, 6))
                                .setScale(0, RoundingMode.HALF_UP)
                                .longValueExact());
            }
        }
    }

    @Test
    void aPrivateSellersPartIsNotTaxed() {
        Selling untaxed = new Selling("", List.of(), 0, false, "");
        Price price = price(rig(listing("P", 80_00, untaxed), 2), new Terms(100_000, Map.of()));
        assertThat(price.taxCents()).isEqualTo(43_00);
    }

    /** Two panels of 80.00 are one order below 200.00, three one above; by the piece 5.00 each whatever the order costs. */
    @Test
    void anOrderIsShippedFreeFromItsAmountOn() {
        Terms terms = new Terms(0, Map.of("Tarnwhistle", new Terms.Order(9_00, OptionalLong.of(200_00))));
        Selling selling = new Selling("Tarnwhistle", List.of(), 5_00, true, "");
        assertThat(price(rig(listing("P", 80_00, selling), 2), terms).shippingCents())
                .isEqualTo(19_00);
        assertThat(price(rig(listing("P", 80_00, selling), 3), terms).shippingCents())
                .isEqualTo(15_00);
        assertThat(price(rig(listing("P", 80_00, at("Quillbarn")), 2), terms).shippingCents())
                .isZero();
    }

    /** Another seller's terms, or what is taken from the shelf, cost no shipping. */
    @Test
    void whatIsOwnedIsNotShipped() {
        Terms terms = new Terms(0, Map.of("Tarnwhistle", new Terms.Order(9_00, OptionalLong.empty())));
        Listing owned = new Listing(
                "P", "P", 0, "USD", LocalDate.of(2026, 1, 1), Condition.OWNED, 9, 1, "test", at("Tarnwhistle"));
        assertThat(price(rig(owned, 2), terms).shippingCents()).isZero();
    }

    /** Nine panels at 10.00 or ten at 8.50: ten are bought, and ten are taxed. */
    @Test
    void whatIsBoughtIsTaxed() {
        Selling selling = new Selling("", List.of(new VolumePrice(10, 8_50)), 0, true, "");
        Price price = price(rig(listing("P", 10_00, selling), 9), new Terms(100_000, Map.of()));
        assertThat(price.partsCents()).isEqualTo(515_00);
        assertThat(price.taxCents()).isEqualTo(51_50);
    }

    /** The whole price against one worked out the long way, and the bound against both, over random rigs and terms. */
    @Test
    void theBoundIsNeverAboveTheTotal() {
        Invented invented = new Invented(71);
        int tight = 0;
        int taxed = 0;
        int shipped = 0;
        int falls = 0;
        for (int round = 0; round < 3000; round++) {
            Terms terms = terms(invented);
            List<Chosen> main = main(invented);
            boolean counted = invented.chance(.7);
            PartsList small = new PartsList(counted ? lines(invented) : List.of(), Map.of());
            Build build = new Build(assembled(main), WIRED.circuit(), small, counted);
            Price price = Price.of(build, LAMP, ALLOWANCES, terms);
            assertThat(price.totalCents()).as("round %d", round).isEqualTo(dumb(main, small, counted, terms));

            List<Chosen> some = subset(invented, main);
            long beside = counted ? small.smallPartsCents() + small.toolsCents() : ALLOWANCES.separatePartsCents();
            long bound = Price.atLeastCents(some, beside, price.hardWiredCents(), terms);
            assertThat(bound)
                    .as("round %d: %s of %s on %s", round, some, main, terms)
                    .isLessThanOrEqualTo(price.totalCents());
            long ofAll = Price.atLeastCents(main, beside, price.hardWiredCents(), terms);
            assertThat(bound).isLessThanOrEqualTo(ofAll);
            long before = 0;
            for (Chosen chosen : main) {
                before += chosen.part().listing().costCents(chosen.count());
            }
            assertThat(before).isLessThanOrEqualTo(price.partsCents() + price.shippingCents());
            tight += ofAll == price.totalCents() ? 1 : 0;
            taxed += price.taxCents() > 0 ? 1 : 0;
            shipped += price.shippingCents() > 0 ? 1 : 0;
            falls += fallsWithMore(main, small, counted, terms) ? 1 : 0;
        }
        assertThat(tight).isGreaterThan(100);
        assertThat(taxed).isGreaterThan(1000);
        assertThat(shipped).isGreaterThan(1000);
        // What makes the bound needful: one more panel, and the whole costs less.
        assertThat(falls).isGreaterThan(10);
    }

    private static boolean fallsWithMore(List<Chosen> main, PartsList small, boolean counted, Terms terms) {
        List<Chosen> more = new ArrayList<>(main);
        Chosen last = more.remove(more.size() - 1);
        more.add(new Chosen(last.part(), last.count() + 1));
        return last.part().listing().atHand() > last.count()
                && dumb(more, small, counted, terms) < dumb(main, small, counted, terms);
    }

    /** No help from the code that it judges: every count is tried, and decimals are exact. */
    private static long dumb(List<Chosen> main, PartsList small, boolean counted, Terms terms) {
        Map<Listing, Integer> wanted = new HashMap<>();
        main.forEach(chosen -> wanted.put(chosen.part().listing(), chosen.count()));
        if (counted) {
            small.lines()
                    .forEach(line -> wanted.put(line.part().listing(), (int)
                            Math.ceil(line.needed() / line.part().perPrice())));
        }
        long sum = counted ? 0 : ALLOWANCES.separatePartsCents();
        long taxed = 0;
        Map<String, Long> orders = new TreeMap<>();
        for (Map.Entry<Listing, Integer> want : wanted.entrySet()) {
            Listing listing = want.getKey();
            long best = Long.MAX_VALUE;
            long goods = 0;
            for (int n = want.getValue(); n <= Math.max(want.getValue(), Math.min(40, listing.atHand())); n++) {
                long each = listing.priceCents();
                for (VolumePrice from : listing.selling().breaks()) {
                    each = n >= from.fromCount() ? from.eachCents() : each;
                }
                long all = n * (each + listing.selling().shippingEachCents());
                if (all < best) {
                    best = all;
                    goods = n * each;
                }
            }
            sum += best;
            taxed += listing.selling().taxed() ? goods : 0;
            if (listing.condition() != Condition.OWNED) {
                orders.merge(listing.selling().seller(), goods, Long::sum);
            }
        }
        for (Map.Entry<String, Long> order : orders.entrySet()) {
            Terms.Order asked = terms.orders().get(order.getKey());
            boolean free = asked != null
                    && asked.freeFromCents().isPresent()
                    && order.getValue() >= asked.freeFromCents().getAsLong();
            sum += asked == null || free ? 0 : asked.eachCents();
        }
        return sum
                + BigDecimal.valueOf(taxed)
                        .multiply(BigDecimal.valueOf(terms.taxPerMillion(), 6))
                        .setScale(0, RoundingMode.HALF_UP)
                        .longValueExact();
    }

    private static Terms terms(Invented invented) {
        Map<String, Terms.Order> orders = new HashMap<>();
        for (String seller : SELLERS) {
            if (!seller.isEmpty() && invented.chance(.6)) {
                orders.put(
                        seller,
                        new Terms.Order(
                                invented.whole(0, 200_00),
                                invented.chance(.6)
                                        ? OptionalLong.of(invented.whole(0, 500_00))
                                        : OptionalLong.empty()));
            }
        }
        return new Terms(invented.chance(.2) ? 0 : invented.whole(1, 250_000), orders);
    }

    private static Listing random(Invented invented, String id, int most) {
        List<VolumePrice> breaks = new ArrayList<>();
        int cents = invented.whole(20_00, 200_00);
        int from = 1;
        int each = cents;
        while (invented.chance(.5)) {
            from += invented.whole(1, 3);
            each -= invented.whole(1, Math.max(1, each / 2));
            if (each <= 0) {
                break;
            }
            breaks.add(new VolumePrice(from, each));
        }
        boolean owned = invented.chance(.1);
        return new Listing(
                id,
                id,
                owned ? 0 : cents,
                "USD",
                LocalDate.of(2026, 1, 1),
                owned ? Condition.OWNED : Condition.NEW,
                invented.whole(most, 40),
                1,
                "test",
                owned
                        ? at(SELLERS.get(invented.whole(0, 3)))
                        : new Selling(
                                SELLERS.get(invented.whole(0, 3)),
                                breaks,
                                invented.chance(.3) ? invented.whole(1, 30_00) : 0,
                                invented.chance(.8),
                                ""));
    }

    private static List<Chosen> main(Invented invented) {
        List<Chosen> main = new ArrayList<>(List.of(
                new Chosen(relisted(invented.battery("B", 1000, 1), random(invented, "B", 4)), invented.whole(1, 4)),
                new Chosen(relisted(invented.inverter("I", 5, 1), random(invented, "I", 1)), 1),
                new Chosen(relisted(invented.controller("C", 20, 1), random(invented, "C", 1)), 1)));
        main.add(new Chosen(relisted(Invented.panel("P", 100, 1), random(invented, "P", 9)), invented.whole(1, 9)));
        return main;
    }

    private static Part relisted(Part part, Listing listing) {
        if (part instanceof Battery battery) {
            return new Battery(listing, battery.store(), 4);
        }
        if (part instanceof Inverter inverter) {
            return new Inverter(listing, inverter.rating(), inverter.outlets());
        }
        if (part instanceof ChargeController controller) {
            return new ChargeController(listing, controller.rating(), controller.outlets());
        }
        return new Panel(listing, 100, 22, -0.004, -0.003, 45);
    }

    private static List<PartsList.Line> lines(Invented invented) {
        List<PartsList.Line> lines = new ArrayList<>();
        for (int i = invented.whole(0, 4); i > 0; i--) {
            int needed = invented.whole(1, 12);
            Listing listing = random(invented, "s" + i, needed);
            SmallPart part = invented.chance(.3)
                    ? new Tool(listing, Tool.Job.MULTIMETER)
                    : new Fitting(listing, Fitting.Use.STRAP, invented.whole(1, 3));
            lines.add(PartsList.Line.of(part, needed));
        }
        return lines;
    }

    /** Some of the parts, and of these some. */
    private static List<Chosen> subset(Invented invented, List<Chosen> main) {
        List<Chosen> some = new ArrayList<>();
        for (Chosen chosen : main) {
            if (invented.chance(.7)) {
                some.add(new Chosen(chosen.part(), invented.whole(1, chosen.count())));
            }
        }
        return some;
    }
}

package tideover.engine.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.part.Selling.VolumePrice;

/** What so many of a part cost where more are cheaper by the piece. */
class ListingTest {
    private static final int MOST = 30;

    private static Listing listing(long cents, int atHand, Selling selling) {
        return new Listing("a", "a", cents, "USD", LocalDate.of(2026, 1, 1), Condition.NEW, atHand, 1, "test", selling);
    }

    private static Selling from(VolumePrice... breaks) {
        return new Selling("", List.of(breaks), 0, true, "");
    }

    /** 9 x 10.00 = 90.00, but 10 x 8.50 = 85.00; 8 x 10.00 = 80.00. */
    @Test
    void tenAreBoughtWhereTheyCostLessThanNine() {
        Listing listing = listing(10_00, 1000, from(new VolumePrice(10, 8_50)));
        assertThat(listing.boughtFor(9)).isEqualTo(10);
        assertThat(listing.costCents(9)).isEqualTo(85_00);
        assertThat(listing.goodsCents(9)).isEqualTo(85_00);
        assertThat(listing.boughtFor(8)).isEqualTo(8);
        assertThat(listing.costCents(8)).isEqualTo(80_00);
        assertThat(listing.costCents(0)).isZero();
    }

    @Test
    void tenCannotBeBoughtWhereNineAreAtHand() {
        Listing listing = listing(10_00, 9, from(new VolumePrice(10, 8_50)));
        assertThat(listing.boughtFor(9)).isEqualTo(9);
        assertThat(listing.costCents(9)).isEqualTo(90_00);
    }

    /** With 1.00 each to ship: 9 x 11.00 = 99.00 and 10 x 9.50 = 95.00. With 6.00 each: 9 x 16.00 = 144.00, 10 x 14.50 = 145.00. */
    @Test
    void shippingByThePieceSpeaksAgainstOneMore() {
        Selling cheap = new Selling("", List.of(new VolumePrice(10, 8_50)), 1_00, true, "");
        Selling dear = new Selling("", List.of(new VolumePrice(10, 8_50)), 6_00, true, "");
        assertThat(listing(10_00, 1000, cheap).costCents(9)).isEqualTo(95_00);
        assertThat(listing(10_00, 1000, cheap).shippingCents(9)).isEqualTo(10_00);
        assertThat(listing(10_00, 1000, dear).boughtFor(9)).isEqualTo(9);
        assertThat(listing(10_00, 1000, dear).costCents(9)).isEqualTo(144_00);
    }

    /** Of those that cost the same the fewest: 2 x 10.00 = 4 x 5.00. */
    @Test
    void noMoreThanNeededIsBoughtForTheSameMoney() {
        assertThat(listing(10_00, 1000, from(new VolumePrice(4, 5_00))).boughtFor(2))
                .isEqualTo(2);
    }

    /** Against every count that could be bought, one by one. */
    @Test
    void isTheLeastOfEveryCountAndNeverFalls() {
        Invented invented = new Invented(61);
        int boughtMore = 0;
        int taxed = 0;
        for (int round = 0; round < 400; round++) {
            int atHand = invented.whole(1, MOST);
            Listing listing = listing(invented.whole(0, 2000), atHand, selling(invented));
            long ppm = invented.whole(0, 300_000);
            long before = 0;
            long beforeTaxed = 0;
            for (int count = 1; count <= atHand; count++) {
                long least = Long.MAX_VALUE;
                long leastTaxed = Long.MAX_VALUE;
                int best = 0;
                for (int bought = count; bought <= atHand; bought++) {
                    long goods = bought * listing.eachCents(bought);
                    long shipping = bought * listing.selling().shippingEachCents();
                    if (goods + shipping < least) {
                        least = goods + shipping;
                        best = bought;
                    }
                    long tax = listing.selling().taxed() ? goods * ppm : 0;
                    leastTaxed = Math.min(leastTaxed, (goods + shipping) * 1_000_000 + tax);
                }
                assertThat(listing.costCents(count))
                        .as("%s x %d", listing, count)
                        .isEqualTo(least);
                assertThat(listing.boughtFor(count)).isEqualTo(best);
                assertThat(listing.boughtFor(best)).isEqualTo(best);
                assertThat(listing.goodsCents(count) + listing.shippingCents(count))
                        .isEqualTo(least);
                assertThat(listing.leastWithTaxMillionths(count, ppm)).isEqualTo(leastTaxed);
                assertThat(least).isGreaterThanOrEqualTo(before);
                assertThat(leastTaxed).isGreaterThanOrEqualTo(beforeTaxed);
                before = least;
                beforeTaxed = leastTaxed;
                boughtMore += best > count ? 1 : 0;
                taxed += leastTaxed > least * 1_000_000 ? 1 : 0;
            }
        }
        assertThat(boughtMore).isGreaterThan(100);
        assertThat(taxed).isGreaterThan(100);
    }

    private static Selling selling(Invented invented) {
        List<VolumePrice> breaks = new ArrayList<>();
        int from = 1;
        int cents = invented.whole(500, 2000);
        while (invented.chance(.7) && cents > 0) {
            from += invented.whole(1, 12);
            breaks.add(new VolumePrice(from, cents));
            cents -= invented.whole(1, 500);
        }
        return new Selling("", breaks, invented.whole(0, 300), invented.chance(.7), "");
    }

    @Test
    void breaksRiseInCountAndFallInPrice() {
        assertThatThrownBy(() -> from(new VolumePrice(4, 5_00), new VolumePrice(4, 4_00)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> from(new VolumePrice(4, 5_00), new VolumePrice(5, 5_00)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

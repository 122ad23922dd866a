package tideover.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Search and screening against their dumb counterparts on many more random shelves. */
@Tag("deep")
class SearchHuntTest {
    private final SearchTest search = new SearchTest();
    private final KeptBoundTest bound = new KeptBoundTest();

    static LongStream shelves() {
        return LongStream.range(20_000, 20_060);
    }

    /** Fewer: every rig of a shelf with real batteries, or for loads that switch themselves, is walked in full. */
    static LongStream realShelves() {
        return LongStream.range(20_000, 20_010);
    }

    static LongStream bounded() {
        return LongStream.range(50_000, 50_200);
    }

    @ParameterizedTest
    @MethodSource("shelves")
    void listsAreThoseOfTheDumbSearch(long seed) {
        search.listsAreThoseOfTheDumbSearch(seed);
    }

    @ParameterizedTest
    @MethodSource("realShelves")
    void cheapestAmongRealBatteriesIsThatOfTheDumbSearch(long seed) {
        search.cheapestAmongRealBatteriesIsThatOfTheDumbSearch(seed);
    }

    @ParameterizedTest
    @MethodSource("realShelves")
    void cheapestForWhatSwitchesItselfIsThatOfTheDumbSearch(long seed) {
        assertThat(search.ruledOutByTheBound(seed)).isNotNegative();
    }

    @ParameterizedTest
    @MethodSource("realShelves")
    void whatAnyBoundClaimsIsNotBelowTheWalk(long seed) {
        SearchTest.comesToEveryPlainRig(seed);
        SearchTest.comesToManyRealRigs(seed);
        SearchTest.comesToManyRigsForWhatSwitchesItself(seed);
    }

    @ParameterizedTest
    @MethodSource("bounded")
    void neverBelowTheWalkedShare(long seed) {
        bound.neverBelowTheWalkedShare(seed);
    }
}

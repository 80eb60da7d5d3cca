package counterpull.engine.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Totals of plates against plain enumeration. */
class PlateSetTest {
    private static final double POUND = 0.45359237;

    private static Kit kit(int atOnce, PlateKind... plates) {
        Kit any = Kits.full();
        return new Kit(List.of(plates), atOnce, any.rubber(), any.hooks(), any.rules(), any.places());
    }

    /** Fewest plates by total, in micrograms. */
    private static TreeMap<Long, Integer> enumerated(Kit kit, double most) {
        List<int[]> all = new ArrayList<>(List.of(new int[0]));
        for (PlateKind kind : kit.plates()) {
            List<int[]> longer = new ArrayList<>();
            for (int[] counts : all) {
                for (int c = 0; c <= kind.count(); c += kit.platesAtOnce()) {
                    int[] more = java.util.Arrays.copyOf(counts, counts.length + 1);
                    more[counts.length] = c;
                    longer.add(more);
                }
            }
            all = longer;
        }
        TreeMap<Long, Integer> fewest = new TreeMap<>();
        for (int[] counts : all) {
            double total = 0;
            int pieces = 0;
            for (int k = 0; k < counts.length; k++) {
                total += counts[k] * kit.plates().get(k).mass();
                pieces += counts[k];
            }
            if (total <= most + 1e-9) {
                fewest.merge(Math.round(total * 1e9), pieces, Math::min);
            }
        }
        return fewest;
    }

    private static void assertAsEnumerated(Kit kit, double most) {
        List<PlateSet> sets = PlateSet.within(kit, most);
        TreeMap<Long, Integer> expected = enumerated(kit, most);
        assertThat(sets).hasSameSizeAs(expected.keySet());
        double before = -1;
        for (PlateSet set : sets) {
            assertThat(set.total()).isGreaterThan(before);
            before = set.total();
            assertThat(expected).containsEntry(Math.round(set.total() * 1e9), set.pieces());
            double sum = 0;
            for (int k = 0; k < set.counts().size(); k++) {
                sum += set.counts().get(k) * kit.plates().get(k).mass();
                assertThat(set.counts().get(k)).isBetween(0, kit.plates().get(k).count());
                assertThat(set.counts().get(k) % kit.platesAtOnce()).isZero();
            }
            // a dozen additions of some ten kilograms
            assertThat(sum).isCloseTo(set.total(), within(1e-12 * 1000));
        }
    }

    @Test
    void pairsOfPlatesOnTwoHornsEachTotalWithTheFewest() {
        assertAsEnumerated(
                kit(2, new PlateKind("20", 20, 7), new PlateKind("10", 10, 5), new PlateKind("5", 5, 3)), 1000);
    }

    @Test
    void singlePlatesOnAMiddleHorn() {
        assertAsEnumerated(
                kit(1, new PlateKind("20", 20, 3), new PlateKind("10", 10, 5), new PlateKind("5", 5, 3)), 1000);
    }

    @Test
    void theRatingIsKeptAndTouched() {
        Kit kit = kit(2, new PlateKind("20", 20, 6), new PlateKind("10", 10, 2));
        assertAsEnumerated(kit, 60);
        List<PlateSet> sets = PlateSet.within(kit, 60);
        assertThat(sets.get(sets.size() - 1).total()).isEqualTo(60);
    }

    @Test
    void poundsAndKilogramsTogether() {
        assertAsEnumerated(
                kit(
                        2,
                        new PlateKind("45 lb", 45 * POUND, 4),
                        new PlateKind("25 lb", 25 * POUND, 2),
                        new PlateKind("20 kg", 20, 2),
                        new PlateKind("2.5 lb", 2.5 * POUND, 4)),
                1000);
        PlateSet pair = PlateSet.within(kit(2, new PlateKind("45 lb", 45 * POUND, 2)), 1000)
                .get(1);
        // 45 lb = 20.41165665 kg
        assertThat(pair.total()).isCloseTo(40.8233133, within(1e-12 * 100));
    }

    @Test
    void twoKindsOfOneMassMakeEachTotalOnce() {
        assertAsEnumerated(kit(2, new PlateKind("old 10", 10, 4), new PlateKind("new 10", 10, 4)), 1000);
    }

    @Test
    void theSameTotalReachedByDifferentSumsIsOneTotal() {
        // 0.1 + 0.2 is not 0.3 in binary
        Kit kit = kit(1, new PlateKind("a", 0.1, 1), new PlateKind("b", 0.2, 1), new PlateKind("c", 0.3, 1));
        List<PlateSet> sets = PlateSet.within(kit, 1000);
        assertThat(sets).hasSize(7);
        assertThat(sets.get(3).pieces()).isEqualTo(1);
    }

    @Test
    void noPlatesMakeOneTotalAndAnUnlimitedRatingAllOfThem() {
        assertThat(PlateSet.within(kit(2), 100)).containsExactly(new PlateSet(0, List.of()));
        assertAsEnumerated(kit(2, new PlateKind("20", 20, 6)), Double.POSITIVE_INFINITY);
    }
}

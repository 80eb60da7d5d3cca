package counterpull.engine.choice;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Hang;
import counterpull.engine.load.Placement;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Trials;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Lines and sets of lines that a kit allows. */
class LineSetTest {
    private static final RubberStock TWO = Kits.rubber(2);
    private static final RubberStock OTHER = new RubberStock(Trials.rubber("s", 0.6, 90), 1);

    private static List<List<ElasticLine>> sets(Kit kit) {
        List<ElasticLine> lines = LineSet.lines(kit);
        return LineSet.sets(kit, lines).stream()
                .map(set -> java.util.Arrays.stream(set).mapToObj(lines::get).toList())
                .toList();
    }

    @Test
    void everyPieceAtEveryHookWithEveryDeadLengthEitherWay() {
        Kit kit = Kits.of(List.of(), List.of(TWO, OTHER), 1, Kits.UPPER, Kits.LOWER);
        // 2 anchors × 2 dead lengths × (single 1, 2; doubled 1, 2 of two pieces and single, doubled of one), 4 strands
        // at most
        assertThat(LineSet.lines(kit)).hasSize(2 * 2 * (4 + 2)).doesNotHaveDuplicates();
    }

    @Test
    void noPieceIsUsedTwice() {
        Kit kit = Kits.of(List.of(), List.of(TWO, OTHER), 3, Kits.UPPER, Kits.LOWER);
        Set<Integer> sizes = new HashSet<>();
        for (List<ElasticLine> set : sets(kit)) {
            Map<Rubber, Integer> used = new HashMap<>();
            for (ElasticLine line : set) {
                used.merge(line.rubber(), line.pieces().count(), Integer::sum);
            }
            assertThat(used.getOrDefault(TWO.rubber(), 0)).isLessThanOrEqualTo(2);
            assertThat(used.getOrDefault(OTHER.rubber(), 0)).isLessThanOrEqualTo(1);
            sizes.add(set.size());
        }
        assertThat(sizes).containsExactlyInAnyOrder(0, 1, 2, 3);
    }

    @Test
    void everySetIsListedOnceTheEmptyOneFirstAsPlainEnumerationHasIt() {
        Kit kit = Kits.of(List.of(), List.of(TWO, OTHER), 2, Kits.UPPER, Kits.LOWER);
        List<ElasticLine> lines = LineSet.lines(kit);
        Set<Set<ElasticLine>> expected = new HashSet<>();
        expected.add(Set.of());
        for (ElasticLine a : lines) {
            expected.add(Set.of(a));
            for (ElasticLine b : lines) {
                boolean same = a.rubber().equals(b.rubber());
                int stock = a.rubber().equals(TWO.rubber()) ? 2 : 1;
                boolean enough = !same || a.pieces().count() + b.pieces().count() <= stock;
                boolean merged = same
                        && a.ends().equals(b.ends())
                        && a.deadLength() == b.deadLength()
                        && a.pieces().hang() == b.pieces().hang();
                if (!a.equals(b) && enough && !merged) {
                    expected.add(Set.of(a, b));
                }
            }
        }
        List<List<ElasticLine>> found = sets(kit);
        assertThat(found.get(0)).isEmpty();
        assertThat(found).hasSize(expected.size());
        assertThat(new HashSet<>(found.stream().map(HashSet::new).toList())).isEqualTo(expected);
    }

    @Test
    void hooksAtTheSideTakeMatchedPairsOnly() {
        Kit middle = Kits.full();
        Kit.Hooks hooks = new Kit.Hooks(
                List.of(Kits.anchor("side", 1.6, 0.4)), List.of(new Attachment("plate", new Vec(0, 0), 0.3)));
        Kit kit = new Kit(middle.plates(), 2, List.of(TWO, OTHER), hooks, middle.rules(), middle.places());
        assertThat(LineSet.lines(kit)).isNotEmpty().allSatisfy(line -> {
            assertThat(line.pieces().placement()).isEqualTo(Placement.MATCHED_PAIR);
            assertThat(line.pieces().count()).isEqualTo(2);
            assertThat(line.rubber()).isEqualTo(TWO.rubber());
        });
    }

    @Test
    void nothingToHangMakesOneEmptySet() {
        assertThat(sets(Kits.of(List.of(), List.of(), 2, Kits.UPPER))).containsExactly(List.of());
        assertThat(sets(Kits.of(List.of(), List.of(TWO), 2))).containsExactly(List.of());
        Kit any = Kits.full();
        LineRules none = new LineRules(List.of(Hang.SINGLE), List.of(), 4, 2);
        assertThat(sets(new Kit(any.plates(), 2, any.rubber(), any.hooks(), none, any.places())))
                .containsExactly(List.of());
    }
}

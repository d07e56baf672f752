package brightseam.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class GrowingTreeTest {

    private static final int LEAVES = 66_000;

    private final List<Tile> full = new ArrayList<>();

    private static Hash leaf(long index) {
        return TreeHash.leaf(("leaf " + index).getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    @Test
    void it_has_the_root_of_the_frontier_at_every_size_across_two_levels_of_tiles() {
        GrowingTree tree = new GrowingTree();
        Frontier frontier = new Frontier();
        assertThat(tree.root()).isEqualTo(TreeHash.EMPTY);
        for (long i = 0; i < LEAVES; i++) {
            tree.add(leaf(i), full);
            frontier.add(leaf(i));
            if (i < 1_100 || i % 997 == 0 || i > 65_400) {
                assertThat(tree.root()).as("size %s", i + 1).isEqualTo(frontier.root());
            }
        }
        assertThat(full).filteredOn(tile -> tile.level() == 0).extracting(Tile::index)
                .containsExactlyElementsOf(LongStream.range(0, 257).boxed().toList());
        assertThat(full).filteredOn(tile -> tile.level() == 1).extracting(Tile::index).containsExactly(0L);
    }

    @Test
    void a_tile_holds_the_hashes_of_its_place_and_the_root_over_them() {
        GrowingTree tree = new GrowingTree();
        LongStream.range(0, 70_000).forEach(i -> tree.add(leaf(i), full));
        Map<Long, Tile> leaves = new HashMap<>();
        full.stream().filter(tile -> tile.level() == 0).forEach(tile -> leaves.put(tile.index(), tile));
        Tile above = full.stream().filter(tile -> tile.level() == 1).findFirst().orElseThrow();
        for (long index = 0; index < Tile.WIDTH; index++) {
            assertThat(above.hashes().get((int) index)).isEqualTo(leaves.get(index).root());
            assertThat(leaves.get(index).hashes().get(3)).isEqualTo(leaf(index * Tile.WIDTH + 3));
        }
    }

    @Test
    void it_goes_on_from_what_stands_right_of_its_full_tiles() {
        GrowingTree tree = new GrowingTree();
        LongStream.range(0, 700).forEach(i -> tree.add(leaf(i), full));
        List<Hash> roots = full.stream().map(Tile::root).toList();
        GrowingTree again = new GrowingTree(700, List.of(tree.openLeaves(), roots));
        assertThat(again.root()).isEqualTo(tree.root());
        LongStream.range(700, 1_100).forEach(i -> {
            tree.add(leaf(i), new ArrayList<>());
            again.add(leaf(i), new ArrayList<>());
        });
        assertThat(again.root()).isEqualTo(tree.root());
    }

    @Test
    void a_copy_grows_by_itself() {
        GrowingTree tree = new GrowingTree();
        tree.add(leaf(0), full);
        Hash before = tree.root();
        tree.copy().add(leaf(1), full);
        assertThat(tree.root()).isEqualTo(before);
        assertThat(tree.size()).isEqualTo(1);
    }

    @Test
    void an_edge_that_does_not_fit_the_size_is_refused() {
        assertThatThrownBy(() -> new GrowingTree(2, List.of(List.of(leaf(0)))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new GrowingTree(256, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

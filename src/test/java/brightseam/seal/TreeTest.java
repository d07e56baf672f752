package brightseam.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Roots and proofs against the definition in RFC 9162, section 2.1, written down here a second time. */
class TreeTest {

    private static final int SIZE_MAX = 70;
    private static final List<Hash> LEAVES =
            LongStream.range(0, SIZE_MAX).mapToObj(i -> TreeHash.leaf(new byte[] {(byte) i, 7})).toList();

    private final ProofMaker maker = new ProofMaker((level, index) ->
            byDefinition(LEAVES.subList((int) (index << level), (int) ((index + 1) << level))));

    /** The reference tests of Certificate Transparency: eight inputs and the roots over the first 1 to 8 of them. */
    @Test
    void the_roots_are_those_of_the_published_reference_tests() {
        List<String> inputs = List.of("", "00", "10", "2021", "3031", "40414243", "5051525354555657",
                "606162636465666768696a6b6c6d6e6f");
        List<String> roots = List.of(
                "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
                "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
                "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
                "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
                "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
                "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
                "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
                "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328");
        Frontier tree = new Frontier();
        assertThat(tree.root().hex()).isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
        for (int i = 0; i < inputs.size(); i++) {
            tree.add(TreeHash.leaf(HexFormat.of().parseHex(inputs.get(i))));
            assertThat(tree.root().hex()).isEqualTo(roots.get(i));
        }
    }

    @Test
    void a_frontier_has_the_root_of_the_definition_at_every_size_and_goes_on_from_its_roots() {
        Frontier tree = new Frontier();
        for (int size = 1; size <= SIZE_MAX; size++) {
            tree = new Frontier(tree.size(), tree.roots());
            tree.add(LEAVES.get(size - 1));
            assertThat(tree.root()).isEqualTo(byDefinition(LEAVES.subList(0, size))).isEqualTo(maker.root(size));
        }
    }

    @Test
    void every_leaf_of_every_size_is_proven_and_nothing_else_is() {
        for (int size = 1; size <= SIZE_MAX; size++) {
            Hash root = maker.root(size);
            for (int index = 0; index < size; index++) {
                List<Hash> path = maker.inclusion(index, size);
                assertThat(MerkleProof.rootFromInclusion(index, size, LEAVES.get(index), path)).contains(root);
                assertThat(MerkleProof.rootFromInclusion(index, size, TreeHash.EMPTY, path)).isNotEqualTo(root);
                for (int wrong = 0; wrong < size; wrong++) {
                    if (wrong != index) {
                        assertThat(MerkleProof.rootFromInclusion(wrong, size, LEAVES.get(index), path))
                                .as("leaf %s of %s at %s", index, size, wrong).isNotEqualTo(
                                        Optional.of(root));
                    }
                }
                assertThat(MerkleProof.rootFromInclusion(index, size, LEAVES.get(index), longer(path))).isEmpty();
            }
        }
    }

    @Test
    void every_older_tree_is_consistent_with_every_newer_one_and_with_no_other() {
        for (int newer = 1; newer <= SIZE_MAX; newer++) {
            for (int older = 1; older <= newer; older++) {
                List<Hash> path = maker.consistency(older, newer);
                Hash root = maker.root(newer);
                assertThat(MerkleProof.isConsistent(older, maker.root(older), newer, root, path)).isTrue();
                assertThat(MerkleProof.isConsistent(older, TreeHash.EMPTY, newer, root, path)).isFalse();
                assertThat(MerkleProof.isConsistent(older, maker.root(older), newer, TreeHash.EMPTY, path)).isFalse();
                assertThat(MerkleProof.isConsistent(older, maker.root(older), newer, root, longer(path))).isFalse();
                for (int step = 0; step < path.size(); step++) {
                    List<Hash> changed = new ArrayList<>(path);
                    changed.set(step, TreeHash.EMPTY);
                    assertThat(MerkleProof.isConsistent(older, maker.root(older), newer, root, changed)).isFalse();
                }
            }
        }
    }

    @Test
    void what_no_tree_has_is_refused() {
        assertThatThrownBy(() -> maker.inclusion(3, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> maker.consistency(4, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Frontier(3, List.of(TreeHash.EMPTY))).isInstanceOf(IllegalArgumentException.class);
        assertThat(MerkleProof.rootFromInclusion(-1, 3, TreeHash.EMPTY, List.of())).isEmpty();
        assertThat(MerkleProof.isConsistent(3, TreeHash.EMPTY, 2, TreeHash.EMPTY, List.of())).isFalse();
    }

    private static List<Hash> longer(List<Hash> path) {
        List<Hash> longer = new ArrayList<>(path);
        longer.add(TreeHash.EMPTY);
        return longer;
    }

    /** MTH of RFC 9162, section 2.1.1. */
    private static Hash byDefinition(List<Hash> leaves) {
        if (leaves.size() == 1) {
            return leaves.getFirst();
        }
        int left = 1;
        while (left * 2 < leaves.size()) {
            left *= 2;
        }
        return TreeHash.node(
                byDefinition(leaves.subList(0, left)), byDefinition(leaves.subList(left, leaves.size())));
    }
}

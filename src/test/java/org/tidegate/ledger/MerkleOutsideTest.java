package org.tidegate.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidegate.Needs;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Roots and proofs of RFC 6962 / RFC 9162 as other programs computed them. */
class MerkleOutsideTest {

    /** Leaf inputs and roots: the test vectors of RFC 6962 log implementations, as shared/data/standards/check-values lists them. */
    private static final List<String> LEAVES =
            List.of("", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f");

    private static final List<String> ROOTS = List.of(
            "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
            "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
            "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
            "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
            "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
            "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
            "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
            "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
            "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328");

    private static List<Hash> leaves(int size) {
        return LEAVES.subList(0, size).stream()
                .map(hex -> Hash.leaf(HexFormat.of().parseHex(hex)))
                .toList();
    }

    @Test
    void rootsEqualThePublishedOnes() {
        Frontier frontier = Frontier.EMPTY;
        for (int size = 0; size <= LEAVES.size(); size++) {
            assertThat(Proofs.root(leaves(size)).hex()).as("size %d", size).isEqualTo(ROOTS.get(size));
            assertThat(frontier.root().hex()).as("frontier of %d", size).isEqualTo(ROOTS.get(size));
            if (size < LEAVES.size()) {
                frontier = frontier.append(leaves(size + 1).get(size));
            }
        }
    }

    @Test
    void outsideInclusionProofsAreJudgedAlike() {
        for (Path file : cases("inclusion")) {
            JsonNode c = read(file);
            assertThat(includes(c))
                    .as(file.toString())
                    .isEqualTo(!c.get("wantErr").asBoolean());
        }
    }

    /** Three of the outside cases concern size 0, which that program refuses as useless; we call the empty tree consistent. */
    @Test
    void outsideConsistencyProofsAreJudgedAlike() {
        for (Path file : cases("consistency")) {
            JsonNode c = read(file);
            long older = number(c.get("size1"));
            if (older > 0 && hashes(c)) {
                assertThat(consistent(c))
                        .as(file.toString())
                        .isEqualTo(!c.get("wantErr").asBoolean());
            }
        }
    }

    /** Some cases have words in place of roots that their program never looks at; ours takes nothing but hashes. */
    private static boolean hashes(JsonNode c) {
        return Base64.getDecoder().decode(c.get("root1").asString()).length == 32
                && Base64.getDecoder().decode(c.get("root2").asString()).length == 32;
    }

    @Test
    void everyProofOfSmallTreesHoldsAndNoOtherRootPasses() {
        List<Hash> leaves = IntStream.range(0, 33)
                .mapToObj(i -> Hash.leaf(new byte[] {(byte) i}))
                .toList();
        for (int size = 1; size <= leaves.size(); size++) {
            List<Hash> tree = leaves.subList(0, size);
            Hash root = Proofs.root(tree);
            for (int i = 0; i < size; i++) {
                List<Hash> path = Proofs.inclusion(tree, i);
                assertThat(Proofs.includes(tree.get(i), i, size, path, root))
                        .as("leaf %d of %d", i, size)
                        .isTrue();
                assertThat(Proofs.includes(tree.get(i), i, size, path, Hash.EMPTY))
                        .isFalse();
            }
            for (int older = 0; older <= size; older++) {
                Hash olderRoot = Proofs.root(leaves.subList(0, older));
                assertThat(Proofs.consistent(older, size, Proofs.consistency(tree, older), olderRoot, root))
                        .as("%d within %d", older, size)
                        .isTrue();
            }
        }
    }

    /** A value that is no SHA-256 hash cannot even be stated. */
    private static boolean includes(JsonNode c) {
        try {
            return Proofs.includes(
                    hash(c.get("leafHash")),
                    number(c.get("leafIdx")),
                    number(c.get("treeSize")),
                    path(c),
                    hash(c.get("root")));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static boolean consistent(JsonNode c) {
        try {
            return Proofs.consistent(
                    number(c.get("size1")),
                    number(c.get("size2")),
                    path(c),
                    hash(c.get("root1")),
                    hash(c.get("root2")));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static List<Path> cases(String kind) {
        Path folder = Path.of(System.getProperty("tidegate.data", "../shared/data"), "standards/merkle/testdata", kind);
        Needs.outside(folder);
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode read(Path file) {
        return new JsonMapper().readTree(file.toFile());
    }

    private static long number(JsonNode node) {
        return node.bigIntegerValue().longValue();
    }

    private static Hash hash(JsonNode base64) {
        return new Hash(HexFormat.of().formatHex(Base64.getDecoder().decode(base64.asString(""))));
    }

    private static List<Hash> path(JsonNode c) {
        List<Hash> path = new ArrayList<>();
        c.get("proof").forEach(p -> path.add(hash(p)));
        return path;
    }
}

package org.tidegate.ledger;

import java.util.ArrayList;
import java.util.List;

/** Makes proofs from leaf hashes and checks them (RFC 9162 §2.1.3, §2.1.4). */
public final class Proofs {

    private Proofs() {}

    public static Hash root(List<Hash> leaves) {
        if (leaves.isEmpty()) {
            return Hash.EMPTY;
        }
        if (leaves.size() == 1) {
            return leaves.get(0);
        }
        int k = split(leaves.size());
        return Hash.node(root(leaves.subList(0, k)), root(leaves.subList(k, leaves.size())));
    }

    /** The audit path of leaf {@code index}, nearest sibling first. */
    public static List<Hash> inclusion(List<Hash> leaves, int index) {
        if (index < 0 || index >= leaves.size()) {
            throw new IllegalArgumentException("no leaf " + index + " in a tree of " + leaves.size());
        }
        List<Hash> path = new ArrayList<>();
        inclusion(leaves, index, path);
        return List.copyOf(path);
    }

    private static void inclusion(List<Hash> leaves, int index, List<Hash> path) {
        if (leaves.size() == 1) {
            return;
        }
        int k = split(leaves.size());
        List<Hash> left = leaves.subList(0, k);
        List<Hash> right = leaves.subList(k, leaves.size());
        if (index < k) {
            inclusion(left, index, path);
            path.add(root(right));
        } else {
            inclusion(right, index - k, path);
            path.add(root(left));
        }
    }

    /** Proves that the tree of the first {@code older} leaves is a beginning of this one. */
    public static List<Hash> consistency(List<Hash> leaves, int older) {
        if (older < 0 || older > leaves.size()) {
            throw new IllegalArgumentException("a tree of " + leaves.size() + " never had " + older + " leaves");
        }
        List<Hash> path = new ArrayList<>();
        if (older > 0) {
            consistency(leaves, older, true, path);
        }
        return List.copyOf(path);
    }

    private static void consistency(List<Hash> leaves, int older, boolean whole, List<Hash> path) {
        if (older == leaves.size()) {
            if (!whole) {
                path.add(root(leaves));
            }
            return;
        }
        int k = split(leaves.size());
        List<Hash> left = leaves.subList(0, k);
        List<Hash> right = leaves.subList(k, leaves.size());
        if (older <= k) {
            consistency(left, older, whole, path);
            path.add(root(right));
        } else {
            consistency(right, older - k, false, path);
            path.add(root(left));
        }
    }

    /** RFC 9162 §2.1.3.2. */
    public static boolean includes(Hash leaf, long index, long size, List<Hash> path, Hash root) {
        if (index < 0 || index >= size) {
            return false;
        }
        long fn = index;
        long sn = size - 1;
        Hash r = leaf;
        for (Hash p : path) {
            if (sn == 0) {
                return false;
            }
            if ((fn & 1) == 1 || fn == sn) {
                r = Hash.node(p, r);
                while ((fn & 1) == 0 && fn != 0) {
                    fn >>= 1;
                    sn >>= 1;
                }
            } else {
                r = Hash.node(r, p);
            }
            fn >>= 1;
            sn >>= 1;
        }
        return sn == 0 && r.equals(root);
    }

    /** RFC 9162 §2.1.4.2; two trees of one size are consistent when they are equal and the proof is empty. */
    public static boolean consistent(long older, long newer, List<Hash> path, Hash olderRoot, Hash newerRoot) {
        if (older < 0 || older > newer) {
            return false;
        }
        if (older == newer || older == 0) {
            return path.isEmpty() && (older == 0 ? olderRoot.equals(Hash.EMPTY) : olderRoot.equals(newerRoot));
        }
        List<Hash> steps = new ArrayList<>(path);
        if (Long.bitCount(older) == 1) {
            steps.add(0, olderRoot);
        }
        return !steps.isEmpty() && climb(older, newer, steps, olderRoot, newerRoot);
    }

    private static boolean climb(long older, long newer, List<Hash> steps, Hash olderRoot, Hash newerRoot) {
        int up = Long.numberOfTrailingZeros(older);
        long fn = (older - 1) >> up;
        long sn = (newer - 1) >> up;
        Hash fr = steps.get(0);
        Hash sr = steps.get(0);
        for (Hash c : steps.subList(1, steps.size())) {
            if (sn == 0) {
                return false;
            }
            if ((fn & 1) == 1 || fn == sn) {
                fr = Hash.node(c, fr);
                sr = Hash.node(c, sr);
                while ((fn & 1) == 0 && fn != 0) {
                    fn >>= 1;
                    sn >>= 1;
                }
            } else {
                sr = Hash.node(sr, c);
            }
            fn >>= 1;
            sn >>= 1;
        }
        return sn == 0 && fr.equals(olderRoot) && sr.equals(newerRoot);
    }

    private static int split(int n) {
        return Integer.highestOneBit(n - 1);
    }
}

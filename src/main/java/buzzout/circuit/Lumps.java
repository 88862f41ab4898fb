package buzzout.circuit;

/** Merges the nodes that pieces conducting both ways hold together (union-find with path halving). */
final class Lumps {
    private final int[] parent;

    private Lumps(int nodes) {
        parent = new int[nodes];
        for (int node = 0; node < nodes; node++) {
            parent[node] = node;
        }
    }

    /** For each node the node that stands for its lump. */
    static int[] of(Wiring wiring) {
        Lumps lumps = new Lumps(wiring.layout().nodes());
        wiring.forEachWire((node, other) -> lumps.parent[lumps.find(node)] = lumps.find(other));
        for (int node = 0; node < lumps.parent.length; node++) {
            lumps.parent[node] = lumps.find(node);
        }
        return lumps.parent;
    }

    private int find(int node) {
        int at = node;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }
}

package buzzout.circuit;

/** Merges the nodes that pieces conducting both ways hold together (union-find with path halving). */
final class Lumps {
    private final int[] parent;

    private Lumps(int[] parent) {
        this.parent = parent;
    }

    /** For each node the node that stands for its lump. */
    static int[] of(Wiring wiring) {
        Layout layout = wiring.layout();
        Lumps lumps = new Lumps(layout.linked.clone());
        for (int net = 0; net < layout.nets(); net++) {
            if (wiring.hasOpenLink(net)) {
                lumps.separate(layout.firstJoint[net], layout.firstJoint[net + 1]);
                wiring.forEachLink(net, lumps::merge);
            }
        }
        wiring.forEachOtherWire(lumps::merge);
        return lumps.merged();
    }

    /** The same where planned links alone hold nodes together. */
    static int[] linked(Layout layout) {
        Lumps lumps = new Lumps(new int[layout.nodes()]);
        lumps.separate(0, layout.nodes());
        for (int link = 0; link < layout.linkFrom.length; link++) {
            lumps.merge(layout.linkFrom[link], layout.linkTo[link]);
        }
        return lumps.merged();
    }

    private void separate(int from, int end) {
        for (int node = from; node < end; node++) {
            parent[node] = node;
        }
    }

    private void merge(int node, int other) {
        parent[find(node)] = find(other);
    }

    private int[] merged() {
        for (int node = 0; node < parent.length; node++) {
            parent[node] = find(node);
        }
        return parent;
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

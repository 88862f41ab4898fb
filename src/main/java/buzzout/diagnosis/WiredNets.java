package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Reading;
import java.util.BitSet;

/** A board with faults of its nets, to be asked what each key would answer with one fault in the key beside them. */
final class WiredNets {
    private final Boards boards;
    private final BitSet charged;
    private final Circuit circuit;
    private final Reading quiet;

    WiredNets(Boards boards, BitSet charged) {
        this.boards = boards;
        this.charged = charged;
        circuit = boards.circuit(charged);
        quiet = boards.quiet(circuit);
    }

    int quiet() {
        return boards.readings().number(quiet);
    }

    int answer(int key) {
        return boards.answer(circuit, quiet, key);
    }

    int answer(int key, int fault) {
        return boards.answer(charged, circuit, quiet, key, fault);
    }
}

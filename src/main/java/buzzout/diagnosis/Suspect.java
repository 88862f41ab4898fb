package buzzout.diagnosis;

import buzzout.circuit.Fault;

/** One fault and the probability that the board has it, given the evidence. */
public record Suspect(Fault fault, double probability) {
    Suspect discounted(double factor) {
        return new Suspect(fault, probability * factor);
    }
}

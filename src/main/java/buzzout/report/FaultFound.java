package buzzout.report;

import buzzout.circuit.FaultKind;

/**
 * One fault that a unit had at some time.
 *
 * @param code as {@code faults PLAN} lists it
 * @param says the end of a sentence
 * @param settled whether the finding named this one alone
 * @param times how often it was found anew: more than once where it came back after a session without it
 */
public record FaultFound(String code, FaultKind kind, String says, boolean settled, int times) {}

package buzzout.diagnosis;

import java.util.BitSet;

/**
 * Faults of nets, and beside them faults in keys that explain what those leave.
 *
 * @param nets the faults of nets; never changed
 * @param charged all of them; never changed
 * @param score what it weighs, apart from trials
 */
record Draft(BitSet nets, BitSet charged, double score) {}

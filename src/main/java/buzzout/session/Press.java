package buzzout.session;

import buzzout.circuit.Pairs;
import java.util.OptionalInt;

/**
 * One press as the probe saw it.
 *
 * @param micros when its first pair closed, probe time
 * @param pairs what it closed beyond the quiet check
 * @param presumed the key that it most likely was, where there is one
 * @param called the key that the program had named, in a roll call
 * @param inCompany whether other keys were down too, so that it proves less
 */
public record Press(long micros, Pairs pairs, OptionalInt presumed, OptionalInt called, boolean inCompany) {}

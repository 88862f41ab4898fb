package buzzout.probe;

/**
 * What a probe says it is.
 *
 * @param protocol the version of the line protocol that it speaks
 * @param sketch the sketch's own version
 * @param chip the microcontroller's part number
 * @param mostPins how many pins it can be told to sweep
 * @param clockHertz its clock
 */
public record Identity(int protocol, String sketch, String chip, int mostPins, long clockHertz) {}

package buzzout.circuit;

/**
 * Pin {@code low} is driven low and pin {@code reads}, pulled up, reads low: current can flow from {@code reads} to
 * {@code low}.
 *
 * @param low index of the driven pin
 * @param reads index of the pin that reads low
 */
public record Pair(int low, int reads) {
    public Pair turned() {
        return new Pair(/* low= */ reads, /* reads= */ low);
    }
}

package buzzout.bench;

/** The empty Java program that starts are measured against. */
final class Empty {
    private Empty() {}

    public static void main(String[] arguments) {}
}

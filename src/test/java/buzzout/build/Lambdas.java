package buzzout.build;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.Consumer;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntToLongFunction;
import java.util.function.LongConsumer;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import java.util.function.UnaryOperator;

/** Lambdas, method references and records of every sort, and what comes of them. */
public final class Lambdas {
    private static final int[] NUMBERS = {3, 1, 2};

    private final String name;

    Lambdas(String name) {
        this.name = name;
    }

    /** What each lambda gives. */
    public static List<Object> results() {
        List<Object> results = new ArrayList<>();
        Consumer<Object> keep = results::add;
        int number = 4;
        long large = 1L << 40;
        double half = 0.5;
        byte small = -3;
        char letter = 'q';
        boolean yes = true;
        String text = "text";

        keep.accept(((Supplier<String>) () -> text + number + large + half + small + letter + yes).get());
        keep.accept(((DoubleBinaryOperator) (a, b) -> a * b + half + large).applyAsDouble(2, 3));
        keep.accept(((BinaryOperator<Integer>) Integer::sum).apply(1, 2));
        keep.accept(((Function<Integer, Long>) Long::valueOf).apply(7));
        keep.accept(((ToLongFunction<Integer>) Integer::intValue).applyAsLong(8));
        keep.accept(((ToDoubleFunction<Character>) each -> each).applyAsDouble('a'));
        keep.accept(((ToDoubleFunction<Long>) each -> each).applyAsDouble(9L));
        keep.accept(((IntToLongFunction) Math::abs).applyAsLong(-10));
        keep.accept(((IntFunction<Object>) Integer::valueOf).apply(11));
        keep.accept(((ToIntFunction<String>) String::length).applyAsInt("twelve"));
        keep.accept(((Function<String, String>) String::trim).apply(" 13 "));
        keep.accept(((Function<Object, String>) String::valueOf).apply(14));
        keep.accept(((Supplier<String>) text::toUpperCase).get());
        keep.accept(((LongSupplier) () -> large).getAsLong());
        keep.accept(((Supplier<List<String>>) ArrayList::new).get());
        keep.accept(((Function<String, Lambdas>) Lambdas::new).apply("fifteen").name);
        keep.accept(((IntFunction<int[]>) int[]::new).apply(3).length);
        keep.accept(Arrays.toString(((UnaryOperator<int[]>) int[]::clone).apply(NUMBERS)));
        keep.accept(((BiFunction<Lambdas, String, String>) Lambdas::privately).apply(new Lambdas("a"), "b"));
        keep.accept(((Predicate<Object>) String.class::isInstance).test("s"));
        keep.accept(new Lambdas("outer").new Inner().both().get());
        keep.accept(((Speaker) () -> "spoken").twice());
        keep.accept(((Comparator<String> & Serializable) (a, b) -> b.compareTo(a)).compare("a", "b"));
        keep.accept(((Function<Integer, Function<Integer, Integer>>) a -> b -> a - b)
                .apply(5)
                .apply(3));
        keep.accept(List.of("c", "a", "b").stream()
                .sorted(Comparator.comparing(each -> each))
                .toList());
        Map<String, Integer> ages = Map.of("seventeen", 17);
        keep.accept(((ToLongFunction<String>) ages::get).applyAsLong("seventeen"));
        keep.accept(ages.entrySet().stream().mapToDouble(Map.Entry::getValue).sum());
        keep.accept(((IntToLongFunction) Lambdas::<Integer>same).applyAsLong(18));
        keep.accept(((Predicate<Boolean>) Lambdas::same).test(true));
        AtomicLong total = new AtomicLong();
        ((LongConsumer) total::addAndGet).accept(16);
        keep.accept(total.get());
        return results.stream()
                .<Object>map(each -> each.getClass().getSimpleName() + " " + each)
                .toList();
    }

    /** Of every pair of records whether they are equal. */
    public static List<Object> equalities() {
        List<Object> records = records();
        List<Object> equalities = new ArrayList<>();
        for (Object one : records) {
            for (Object other : records) {
                equalities.add(one.equals(other));
            }
            equalities.add(one.equals("something else"));
        }
        return equalities;
    }

    public static List<Object> hashes() {
        return records().stream().<Object>map(Object::hashCode).toList();
    }

    /** Captures nothing. */
    public static Object constant() {
        return (Supplier<String>) () -> "constant";
    }

    private static List<Object> records() {
        List<Object> records = new ArrayList<>(List.of(
                new None(),
                new None(),
                new Kept("a", List.of(1)),
                new Kept("a", List.of(1)),
                new Kept("a", List.of(2)),
                new Kept("b", List.of(1))));
        for (double each : new double[] {0.0, -0.0, Double.NaN, 1}) {
            records.add(new Every(true, (byte) 1, 'c', (short) 2, 3, 4L, 5f, each, new int[0].length + "x"));
            records.add(new Every(true, (byte) 1, 'c', (short) 2, 3, 4L, (float) each, 1, "x"));
        }
        records.add(new Every(false, (byte) -1, 'd', (short) -2, -3, -4L, -5f, -6, "y"));
        records.add(new Every(true, (byte) 1, 'c', (short) 2, 3, 4L << 32, 5f, 1, "x"));
        return records;
    }

    private static <T> T same(T value) {
        return value;
    }

    private String privately(String other) {
        return name + other;
    }

    final class Inner {
        private String own() {
            return "inner";
        }

        Supplier<String> both() {
            Supplier<String> reference = this::own;
            return () -> reference.get() + Lambdas.this.privately("!") + own();
        }
    }

    interface Speaker {
        String speak();

        private String again(String once) {
            return once + " again";
        }

        default String twice() {
            return ((Function<String, String>) this::again).apply(speak());
        }
    }

    record None() {}

    record Kept(String text, List<Integer> numbers) {}

    record Every(
            boolean truth,
            byte small,
            char letter,
            short shortNumber,
            int number,
            long large,
            float single,
            double exact,
            String text) {}
}

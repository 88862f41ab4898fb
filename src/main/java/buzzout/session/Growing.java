package buzzout.session;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.RandomAccess;

/**
 * An immutable list that is cheap to make one longer, or to give another last element: such lists share all the others,
 * so that an event costs as little in a session of many presses as in one of few. They share what those others come to as
 * well, in whatever way they are summed up.
 */
final class Growing<T> extends AbstractList<T> implements RandomAccess {
    private static final int ROOM = 8;

    /** How many of the newest elements no remembered sum holds: lists that are a little shorter are asked in turn with the newest. */
    private static final int NEWEST = 16;

    private final Slots<T> shared;
    private final List<T> last;
    private final int size;

    /** Elements behind each other, each written once, so that any list can read those that were there when it was made. */
    private static final class Slots<T> {
        private final T[] elements;
        private final Map<Class<?>, Remembered<T, ?>> sums = new HashMap<>();
        private int used;

        @SuppressWarnings("unchecked")
        Slots(int room) {
            elements = (T[]) new Object[room];
        }

        /** The first so many of others, and what of their sums holds for these too. */
        Slots(Slots<T> others, int used, int room) {
            synchronized (others) {
                elements = Arrays.copyOf(others.elements, room);
                others.sums.forEach((way, sum) -> {
                    if (sum.count <= used) {
                        sums.put(way, sum.copy());
                    }
                });
            }
            this.used = used;
        }

        /** What the first so many come to; those must have been put. */
        synchronized <S extends Summing.Sum<T, S>> S sum(Summing<T, S> way, int count) {
            Remembered<T, S> known = remembered(way, count);
            S sum = known.sum.copy();
            take(sum, known.count, count);
            return sum;
        }

        /** Known, and known for longer from now on: its sum grows in place. */
        private <S extends Summing.Sum<T, S>> Remembered<T, S> remembered(Summing<T, S> way, int count) {
            // A way of summing gives one type of sum.
            @SuppressWarnings("unchecked")
            Remembered<T, S> known = (Remembered<T, S>) sums.get(way.getClass());
            if (known == null || known.count > count || !known.way.equals(way)) {
                known = new Remembered<>(way, way.nothing(), 0);
            }
            int settled = Math.max(known.count, count - NEWEST);
            take(known.sum, known.count, settled);
            Remembered<T, S> longer = new Remembered<>(way, known.sum, settled);
            sums.put(way.getClass(), longer);
            return longer;
        }

        private void take(Summing.Sum<T, ?> sum, int from, int to) {
            for (int at = from; at < to; at++) {
                sum.take(elements[at]);
            }
        }

        /** Says whether there was room at this place. */
        synchronized boolean put(int at, T element) {
            boolean free = at == used && at < elements.length;
            if (free) {
                elements[at] = element;
                used++;
            }
            return free;
        }
    }

    /** What the first {@code count} elements come to. */
    private record Remembered<T, S extends Summing.Sum<T, S>>(Summing<T, S> way, S sum, int count) {
        Remembered<T, S> copy() {
            return new Remembered<>(way, sum.copy(), count);
        }
    }

    private Growing(Slots<T> shared, List<T> last, int size) {
        this.shared = shared;
        this.last = last;
        this.size = size;
    }

    static <T> Growing<T> of(List<T> elements) {
        if (elements instanceof Growing<T> growing) {
            return growing;
        }
        return new Growing<T>(new Slots<>(ROOM), List.of(), 0).withAll(elements);
    }

    Growing<T> with(T element) {
        if (size == 0) {
            return new Growing<>(shared, List.of(element), 1);
        }
        Slots<T> slots = shared;
        if (!slots.put(size - 1, last.get(0))) {
            int room = Math.max(ROOM, size + size / 2);
            slots = new Slots<>(shared, size - 1, room);
            slots.put(size - 1, last.get(0));
        }
        return new Growing<>(slots, List.of(element), size + 1);
    }

    Growing<T> withAll(List<T> elements) {
        Growing<T> all = this;
        for (T element : elements) {
            all = all.with(element);
        }
        return all;
    }

    Growing<T> withLast(T element) {
        return new Growing<>(shared, List.of(element), size);
    }

    /** The first so many. */
    Growing<T> first(int count) {
        if (count == size) {
            return this;
        }
        return count == 0 ? of(List.of()) : new Growing<>(shared, List.of(shared.elements[count - 1]), count);
    }

    /** What the elements come to. As most of it is remembered, that costs as little for many elements as for few. */
    <S extends Summing.Sum<T, S>> S sum(Summing<T, S> way) {
        S sum = shared.sum(way, Math.max(0, size - 1));
        last.forEach(sum::take);
        return sum;
    }

    @Override
    public T get(int index) {
        Objects.checkIndex(index, size);
        return index == size - 1 ? last.get(0) : shared.elements[index];
    }

    @Override
    public int size() {
        return size;
    }

    /** At once where one is longer, and where both grew from the same. */
    @Override
    public boolean equals(Object other) {
        if (other instanceof Growing<?> growing && (growing.size != size || growing.shared == shared)) {
            return growing.size == size && growing.last.equals(last);
        }
        return super.equals(other);
    }

    @Override
    public int hashCode() {
        return super.hashCode();
    }
}

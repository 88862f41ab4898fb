package buzzout.session;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;

/**
 * An immutable list that is cheap to make one longer, or to give another last element: such lists share all the others,
 * so that an event costs as little in a session of many presses as in one of few.
 */
final class Growing<T> extends AbstractList<T> implements RandomAccess {
    private static final int ROOM = 8;

    private final Slots<T> shared;
    private final List<T> last;
    private final int size;

    /** Elements behind each other, each written once, so that any list can read those that were there when it was made. */
    private static final class Slots<T> {
        private final T[] elements;
        private int used;

        @SuppressWarnings("unchecked")
        Slots(int room) {
            elements = (T[]) new Object[room];
        }

        Slots(T[] elements, int used) {
            this.elements = elements;
            this.used = used;
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
            slots = new Slots<>(Arrays.copyOf(shared.elements, room), size - 1);
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

    @Override
    public T get(int index) {
        Objects.checkIndex(index, size);
        return index == size - 1 ? last.get(0) : shared.elements[index];
    }

    @Override
    public int size() {
        return size;
    }

    /** At once where both grew from the same and neither became longer. */
    @Override
    public boolean equals(Object other) {
        if (other instanceof Growing<?> growing && growing.shared == shared && growing.size == size) {
            return growing.last.equals(last);
        }
        return super.equals(other);
    }

    @Override
    public int hashCode() {
        return super.hashCode();
    }
}

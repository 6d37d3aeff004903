package everyblade.core.turning;

import java.util.AbstractList;
import java.util.RandomAccess;
import java.util.function.IntFunction;

/**
 * An append-only list that never changes for those who hold it: {@link #with} gives a longer one and leaves this one as
 * it was.
 *
 * <p>Trails share their storage: adding to the newest of a family costs amortised constant time, adding to an older one
 * copies it. So a fold keeps every earlier state without paying for it.
 */
public final class Trail<T> extends AbstractList<T> implements RandomAccess {

    private static final class Storage {
        Object[] items = new Object[8];
        int used;
        /** Makes the items that are not there yet. */
        IntFunction<?> maker = index -> null;

        synchronized Object made(int index) {
            if (items[index] == null) {
                items[index] = maker.apply(index);
            }
            return items[index];
        }
    }

    private final Storage storage;
    private final int size;

    private Trail(Storage storage, int size) {
        this.storage = storage;
        this.size = size;
    }

    /** A trail without items. */
    public static <T> Trail<T> empty() {
        return new Trail<>(new Storage(), 0);
    }

    /** A trail of so many items, each of which is made when somebody first asks for it. */
    public static <T> Trail<T> onDemand(int size, IntFunction<? extends T> maker) {
        Storage storage = new Storage();
        storage.items = new Object[Math.max(8, size)];
        storage.used = size;
        storage.maker = maker;
        return new Trail<>(storage, size);
    }

    /** This trail and one more item at its end. */
    public Trail<T> with(T item) {
        synchronized (storage) {
            if (storage.used == size) {
                if (size == storage.items.length) {
                    storage.items = java.util.Arrays.copyOf(storage.items, size * 2);
                }
                storage.items[size] = item;
                storage.used = size + 1;
                return new Trail<>(storage, size + 1);
            }
        }
        Storage copy = new Storage();
        copy.items = java.util.Arrays.copyOf(storage.items, Math.max(8, size * 2));
        copy.items[size] = item;
        copy.used = size + 1;
        copy.maker = storage.maker;
        return new Trail<>(copy, size + 1);
    }

    /** Its first items. */
    public Trail<T> first(int count) {
        java.util.Objects.checkIndex(count, size + 1);
        return new Trail<>(storage, count);
    }

    /** The item at the end. */
    public T last() {
        return get(size - 1);
    }

    @Override
    @SuppressWarnings("unchecked")
    public T get(int index) {
        java.util.Objects.checkIndex(index, size);
        Object item = storage.items[index];
        return (T) (item == null ? storage.made(index) : item);
    }

    @Override
    public int size() {
        return size;
    }
}

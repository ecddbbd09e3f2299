package org.twinbar.study;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;

/**
 * What was made of things in one state each, kept until that state has passed or others need the
 * room; what was asked for longest ago goes first. Two that ask for the same at once make it once.
 *
 * @param <K> what tells things apart
 * @param <S> what tells states of one thing apart
 * @param <V> what is made of a thing in a state; never changed
 */
public final class Remembered<K, S, V> {

    private static final int DOORS = 64;

    private final long mostBytes;
    private final ToLongFunction<V> bytes;
    private final Map<K, Held<S, V>> held = new LinkedHashMap<>(16, 0.75f, true);
    private final Object[] doors = new Object[DOORS];
    private long sumOfBytes;

    private record Held<S, V>(S state, V value, long bytes) {}

    /**
     * @param mostBytes about how much may be kept
     * @param bytes about how much one value holds
     */
    public Remembered(long mostBytes, ToLongFunction<V> bytes) {
        this.mostBytes = mostBytes;
        this.bytes = bytes;
        for (int i = 0; i < DOORS; i++) {
            doors[i] = new Object();
        }
    }

    /** Returns a share of the memory that this program may have, in bytes. */
    public static long shareOfMemory(int part) {
        return Runtime.getRuntime().maxMemory() / part;
    }

    /**
     * Returns what belongs to a thing in a state, made now where it isn't known.
     *
     * @param make must not ask for the same again
     */
    public V get(K key, S state, Supplier<V> make) {
        synchronized (doors[Math.floorMod(key.hashCode(), DOORS)]) {
            return find(key, state).orElseGet(() -> {
                V made = make.get();
                keep(key, new Held<>(state, made, bytes.applyAsLong(made)));
                return made;
            });
        }
    }

    /** Returns what belongs to a thing in a state, where it is known. */
    public synchronized Optional<V> find(K key, S state) {
        return Optional.ofNullable(held.get(key))
                .filter(it -> it.state().equals(state))
                .map(Held::value);
    }

    private synchronized void keep(K key, Held<S, V> fresh) {
        Held<S, V> before = held.put(key, fresh);
        sumOfBytes += fresh.bytes() - (before == null ? 0 : before.bytes());
        Iterator<Held<S, V>> oldest = held.values().iterator();
        while (sumOfBytes > mostBytes && held.size() > 1) {
            sumOfBytes -= oldest.next().bytes();
            oldest.remove();
        }
    }
}

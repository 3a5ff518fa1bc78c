package org.sunder.advice;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/**
 * A few large things, each flyer's own: where they take too much room, what was longest not used goes; the last stays whatever it
 * takes. A cache that weighs how often each is asked for, which serves answers well, lets go the very thing that was made a moment
 * ago where many flyers ask in turn, and never keeps what is larger than its room. Safe for use by several threads at once.
 */
final class LatestUsed<V> {

    private final long room;
    private final ToLongFunction<V> size;
    private final Map<UUID, V> byUse = new LinkedHashMap<>(16, 0.75f, true);
    private long taken;

    /**
     * @param room that all may take together
     * @param size of one, which does not change
     */
    LatestUsed(long room, ToLongFunction<V> size) {
        this.room = room;
        this.size = size;
    }

    synchronized @Nullable V get(UUID flyer) {
        return byUse.get(flyer);
    }

    synchronized void put(UUID flyer, V value) {
        V before = byUse.put(flyer, value);
        taken += size.applyAsLong(value) - (before == null ? 0 : size.applyAsLong(before));
        Iterator<V> longestUnused = byUse.values().iterator();
        while (taken > room && byUse.size() > 1) {
            taken -= size.applyAsLong(longestUnused.next());
            longestUnused.remove();
        }
    }
}

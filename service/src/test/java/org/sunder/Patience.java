package org.sunder;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Waits for as long as something moves. A busy machine makes everything slow but stops nothing, so what tells a hang is that
 * nothing has moved for a while, not that it takes long.
 */
public final class Patience {

    /** How long nothing may move. */
    public static final Duration STILLNESS = Duration.ofSeconds(60);

    /** After this long it is over, whatever moves: two processes may keep each other busy for ever. */
    public static final Duration LAST_NET = Duration.ofMinutes(8);

    private final Supplier<?> movement;
    private final Instant began = Instant.now();
    private Instant moved = began;
    private @Nullable Object last;

    /**
     * Begins to wait.
     *
     * @param movement anything that differs from what it was before as long as there is progress
     */
    public Patience(Supplier<?> movement) {
        this.movement = movement;
    }

    /** Whether there is reason to wait on. */
    public boolean lasts() {
        Instant now = Instant.now();
        Object next = movement.get();
        if (!Objects.equals(next, last)) {
            last = next;
            moved = now;
        }
        return Duration.between(moved, now).compareTo(STILLNESS) < 0
                && Duration.between(began, now).compareTo(LAST_NET) < 0;
    }

    /**
     * Waits until something is so; false if nothing moves any more before.
     *
     * @param movement anything that differs from what it was before as long as there is progress
     */
    public static boolean until(BooleanSupplier done, Supplier<?> movement) throws InterruptedException {
        Patience patience = new Patience(movement);
        while (!done.getAsBoolean()) {
            if (!patience.lasts()) {
                return false;
            }
            Thread.sleep(50);
        }
        return true;
    }

    /** What a process has computed so far: it moves as long as the process does anything. */
    public static Supplier<?> of(Process process) {
        return of(process.toHandle());
    }

    /** What this process has computed so far, for a service that runs in it. */
    public static Supplier<?> ofThisProcess() {
        return of(ProcessHandle.current());
    }

    private static Supplier<?> of(ProcessHandle process) {
        return () -> process.info().totalCpuDuration();
    }
}

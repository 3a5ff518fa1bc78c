package org.sunder.advice;

import com.github.benmanes.caffeine.cache.AsyncCache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.sunder.airframe.Setup;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.LeafPosterior;
import org.sunder.engine.learning.posterior.NewSetups;

/**
 * What was found lately: each flyer's fleet, its model, and what was asked of it. Everything is kept by the snapshot that it
 * follows from, to save work and never to decide: what is let go is found anew, the same to the last bit. Two who ask the same
 * at once wait for one computation.
 *
 * <p>Models have room of their own. One is dear to make and cheap to change, and larger than hundreds of answers: among them it
 * would be the first to go. No more are at work at once than there are cores, so turns are short.
 */
@Component
class Findings {

    /** Parts of the memory that answers and models may take: with 256 MiB the fleets of eight flyers are kept. */
    private static final int ANSWERS = 6;

    private static final int MODELS = 4;

    private static final int KILOBYTE = 1024;
    private static final int POSTERIOR = 400; // kB
    private static final int SNAPSHOT = 50;
    private static final int ANSWER = 50;

    private final AsyncCache<Object, Object> kept;
    private final LatestUsed<ModelOf> models;
    /** Who asks for the model of a flyer waits for whoever makes it. */
    private final Object[] turns = Stream.generate(Object::new).limit(64).toArray();

    /** Models are large, and all cores work on one: no more are in use at once than there are cores. */
    private final Semaphore inUse = new Semaphore(Runtime.getRuntime().availableProcessors());

    Findings() {
        this(Runtime.getRuntime().maxMemory() / KILOBYTE);
    }

    /**
     * Findings of a service.
     *
     * @param kilobytes of memory that the service has
     */
    Findings(long kilobytes) {
        kept = Caffeine.newBuilder()
                .maximumWeight(kilobytes / ANSWERS)
                .weigher((Object asked, Object found) -> weight(found))
                .executor(Runnable::run)
                .buildAsync();
        models = new LatestUsed<>(kilobytes / MODELS, found -> found.model().kilobytes());
    }

    private static int weight(Object found) {
        if (found instanceof FleetModel model) {
            return model.kilobytes();
        }
        if (found instanceof NewSetups joint) {
            return joint.kilobytes();
        }
        if (found instanceof LeafPosterior) {
            return POSTERIOR;
        }
        return found instanceof FleetSnapshot snapshot
                ? SNAPSHOT + snapshot.joints().size()
                : ANSWER;
    }

    /** Asked of one version of a fleet. */
    private sealed interface OfFleet {

        FleetSnapshot fleet();

        /** Whether a later version than this is known, of the same flyer's fleet. */
        default boolean isBefore(FleetSnapshot later) {
            return fleet().flyer().equals(later.flyer()) && fleet().version() < later.version();
        }
    }

    /** A flyer's fleet as it was read, or written, last. */
    private record LatestOf(UUID flyer) {}

    /** The model made last of a flyer's fleet, and the version it was made of: the next differs little from it. */
    private record ModelOf(long version, FleetModel model) {

        @SuppressWarnings("ReferenceEquality") // a quick yes: to compare a large log takes milliseconds
        boolean isOf(FleetSnapshot fleet) {
            boolean same = model.log() == fleet.log() || model.log().equals(fleet.log());
            return same && model.priors().equals(fleet.priors());
        }

        FleetModel changedTo(FleetSnapshot fleet) {
            return model.priors().equals(fleet.priors())
                    ? model.changedTo(fleet.log())
                    : FleetModel.of(fleet.log(), fleet.priors());
        }
    }

    private record ExampleModelOf(FleetLog log) {}

    private record PosteriorOf(FleetSnapshot fleet, UUID setup) implements OfFleet {}

    private record NewSetupsOf(FleetSnapshot fleet, UUID joint) implements OfFleet {}

    private record AnswerTo(FleetSnapshot fleet, Object question) implements OfFleet {}

    /** The flyer's fleet kept last, of whatever version. */
    @Nullable FleetSnapshot latest(UUID flyer) {
        return (FleetSnapshot) ifPresent(new LatestOf(flyer));
    }

    /** Keeps a fleet as the latest, unless a later one is known, and lets go what was asked of those before. */
    void keep(FleetSnapshot fleet) {
        kept.synchronous()
                .asMap()
                .merge(
                        new LatestOf(fleet.flyer()),
                        fleet,
                        (before, now) -> ((FleetSnapshot) before).version() > fleet.version() ? before : now);
        kept.asMap().keySet().removeIf(asked -> asked instanceof OfFleet question && question.isBefore(fleet));
    }

    /**
     * What the model of a fleet says.
     *
     * @param question asked of the model; asks nothing else here, and its answer does not hold the model
     */
    <T> T ask(FleetSnapshot fleet, Function<FleetModel, T> question) {
        return inTurn(() -> question.apply(model(fleet)));
    }

    private <T> T inTurn(Supplier<T> work) {
        inUse.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            inUse.release();
        }
    }

    private FleetModel model(FleetSnapshot fleet) {
        ModelOf latest;
        synchronized (turns[Math.floorMod(fleet.flyer().hashCode(), turns.length)]) {
            ModelOf before = models.get(fleet.flyer());
            if (before != null && (before.version() > fleet.version() || before.isOf(fleet))) {
                latest = before;
            } else {
                latest = new ModelOf(
                        fleet.version(),
                        before == null ? FleetModel.of(fleet.log(), fleet.priors()) : before.changedTo(fleet));
                models.put(fleet.flyer(), latest);
            }
        }
        return latest.isOf(fleet) ? latest.model() : latest.changedTo(fleet);
    }

    /** What is known of one setup. */
    LeafPosterior posterior(FleetSnapshot fleet, Setup setup) {
        return find(
                new PosteriorOf(fleet, setup.id()), () -> ask(fleet, setup, model -> model.leaf(fleet.leaf(setup))));
    }

    /**
     * What would be known of a setup that is stored nowhere. What the log says of its joint is kept, as changes are tried one
     * after another.
     *
     * @param inputSd relative standard deviation of its handbook charge
     */
    LeafPosterior posteriorOfNew(FleetSnapshot fleet, Setup setup, double inputSd) {
        NewSetups joint = find(
                new NewSetupsOf(fleet, setup.jointId()),
                () -> ask(fleet, setup, model -> fleet.newSetups(model, setup.jointId())));
        return joint.with(inputSd);
    }

    /** What is invented teaches nothing real, and learns from nothing real. */
    private <T> T ask(FleetSnapshot fleet, Setup setup, Function<FleetModel, T> question) {
        return fleet.ofExample(setup) ? inTurn(() -> question.apply(example(fleet))) : ask(fleet, question);
    }

    private FleetModel example(FleetSnapshot fleet) {
        return find(new ExampleModelOf(fleet.example()), () -> FleetModel.of(fleet.example(), Priors.standard()));
    }

    /**
     * The answer to a question about a fleet.
     *
     * @param question what is asked, equal to another that asks the same
     * @param found finds the answer
     */
    <T> T answer(FleetSnapshot fleet, Object question, Supplier<T> found) {
        return find(new AnswerTo(fleet, question), found);
    }

    private @Nullable Object ifPresent(Object asked) {
        return kept.synchronous().getIfPresent(asked);
    }

    @SuppressWarnings("unchecked") // what is kept under a question is what was found for it
    private <T> T find(Object asked, Supplier<T> found) {
        CompletableFuture<Object> mine = new CompletableFuture<>();
        CompletableFuture<Object> others = kept.asMap().putIfAbsent(asked, mine);
        if (others != null) {
            return (T) joined(others, found);
        }
        try {
            T answer = found.get();
            mine.complete(answer);
            return answer;
        } catch (RuntimeException | Error e) {
            mine.cancel(false); // taken out of the cache without a word in the log: who asked is told
            throw e;
        }
    }

    /** What another asker finds; where that failed, the failure is found again. */
    private static Object joined(CompletableFuture<Object> others, Supplier<?> found) {
        try {
            return others.join();
        } catch (CancellationException e) {
            return found.get();
        }
    }
}

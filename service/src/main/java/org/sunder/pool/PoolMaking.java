package org.sunder.pool;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Service;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.posterior.FlyerEvidence;
import org.sunder.engine.learning.posterior.Pool;
import org.sunder.persistence.Digests;
import org.sunder.persistence.DurableTransactions;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * Makes snapshots of the pool from the logs of those who share. One is made only where at least three flyers' part differs from the
 * snapshot before, so that two successive ones never tell what one flyer or two of them brought, took away or changed. Those who take
 * part stand in an order that comes of what they logged alone, and numbers are rounded: whose log is whose cannot be read from it.
 */
@Service
public class PoolMaking {

    /** Fewest flyers whose part must differ between two successive snapshots. */
    static final int FEWEST_CHANGES = 3;

    private static final Logger LOG = LoggerFactory.getLogger(PoolMaking.class);

    private final PoolStore store;
    private final FlyerLogs logs;
    private final DurableTransactions transactions;
    private final Clock clock;
    private final ReentrantLock making = new ReentrantLock();

    PoolMaking(PoolStore store, FlyerLogs logs, DurableTransactions transactions, Clock clock) {
        this.store = store;
        this.logs = logs;
        this.transactions = transactions;
        this.clock = clock;
    }

    /** One who takes part, with what the log says. */
    private record Member(UUID flyer, long version, int tests, String digest, FlyerEvidence evidence) {}

    /** Makes a snapshot once a day, where enough is new. */
    @Scheduled(initialDelay = 1, fixedDelay = 24, timeUnit = TimeUnit.HOURS)
    void daily() {
        try {
            PoolSnapshot made = renew();
            LOG.info(
                    "Made snapshot {} of the pool, from {} flyers",
                    made.number(),
                    made.file().flyers());
        } catch (ProblemException e) {
            LOG.debug("No snapshot of the pool was made: {}", e.getMessage());
        }
    }

    /**
     * Makes the next snapshot.
     *
     * @throws ProblemException 409 where too few share or too little is new, saying what is missing
     */
    public PoolSnapshot renew() {
        making.lock();
        try {
            return made();
        } finally {
            making.unlock();
        }
    }

    private PoolSnapshot made() {
        List<PoolStore.Sharer> sharers = store.sharers();
        refuseTooFew(sharers.size());
        List<PoolStore.Share> before = store.shares(store.newestMade());
        refuseTooLittle(movedOn(sharers, before));
        List<Member> members = members(sharers);
        refuseTooFew(members.size());
        refuseTooLittle(changed(members, before));
        Pool pool = Pool.of(members.stream().map(Member::evidence).toList(), Priors.standard());
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        PoolFile file = PoolFile.of(
                LocalDate.ofInstant(now, ZoneOffset.UTC).toString(),
                members.size(),
                members.stream().mapToInt(Member::tests).sum(),
                pool.learned());
        List<PoolStore.Share> shares = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            Member member = members.get(i);
            shares.add(
                    new PoolStore.Share(member.flyer(), member.version(), member.digest(), others(pool, i, members)));
        }
        try {
            return transactions.commit(() -> store.add(file, null, now, shares));
        } catch (DataIntegrityViolationException e) {
            throw new ProblemException(
                    ProblemType.CONFLICT, "Another snapshot was made or taken in meanwhile. Nothing was stored.");
        }
    }

    private static @Nullable List<PoolNormal> others(Pool pool, int member, List<Member> members) {
        return members.size() > PoolFile.FEWEST_FLYERS ? PoolFile.kept(pool.learnedWithout(member)) : null;
    }

    private static void refuseTooFew(int flyers) {
        if (flyers < PoolFile.FEWEST_FLYERS) {
            throw new ProblemException(
                    ProblemType.CONFLICT,
                    "A pool speaks from five or more flyers who share three or more counted tests each; there are fewer.");
        }
    }

    private static void refuseTooLittle(long changes) {
        if (changes < FEWEST_CHANGES) {
            throw new ProblemException(
                    ProblemType.CONFLICT,
                    "Too little is new: what at least three flyers share must differ from the snapshot before, so that"
                            + " nobody can tell what one of them brought.");
        }
    }

    /** How many may bring something else than before, by the versions of their fleets alone. */
    private static long movedOn(List<PoolStore.Sharer> sharers, List<PoolStore.Share> before) {
        Map<UUID, Long> now =
                sharers.stream().collect(Collectors.toMap(PoolStore.Sharer::flyer, PoolStore.Sharer::version));
        Map<UUID, Long> then =
                before.stream().collect(Collectors.toMap(PoolStore.Share::flyer, PoolStore.Share::version));
        return differing(now, then);
    }

    private static long changed(List<Member> members, List<PoolStore.Share> before) {
        Map<UUID, String> now = members.stream().collect(Collectors.toMap(Member::flyer, Member::digest));
        Map<UUID, String> then =
                before.stream().collect(Collectors.toMap(PoolStore.Share::flyer, PoolStore.Share::digest));
        return differing(now, then);
    }

    /** How many flyers came, went, or have another value. */
    private static <T> long differing(Map<UUID, T> now, Map<UUID, T> then) {
        Map<UUID, T> gone = new HashMap<>(then);
        gone.keySet().removeAll(now.keySet());
        return gone.size()
                + now.entrySet().stream()
                        .filter(entry -> !entry.getValue().equals(then.get(entry.getKey())))
                        .count();
    }

    private List<Member> members(List<PoolStore.Sharer> sharers) {
        return sharers.stream()
                .flatMap(sharer -> {
                    FlyerLogs.Versioned read = logs.of(sharer.flyer());
                    FleetLog log = counted(read.log());
                    int tests =
                            log.airframes().stream().mapToInt(PoolMaking::tests).sum();
                    return tests < PoolFile.FEWEST_TESTS
                            ? Stream.<Member>empty()
                            : Stream.of(new Member(
                                    sharer.flyer(),
                                    read.version(),
                                    tests,
                                    Digests.sha256(log.toString()),
                                    FlyerEvidence.of(log, Priors.standard())));
                })
                .sorted(Comparator.comparing(Member::digest))
                .toList();
    }

    /** A log without airframes that nothing was fired at, in an order that no id decides. */
    private static FleetLog counted(FleetLog log) {
        return new FleetLog(log.airframes().stream()
                .filter(AirframeLog::hasTrials)
                .sorted(Comparator.comparing(AirframeLog::toString))
                .toList());
    }

    private static int tests(AirframeLog airframe) {
        return airframe.joints().stream()
                .flatMap(joint -> joint.setups().stream())
                .mapToInt(setup -> setup.trials().size())
                .sum();
    }
}

package org.sunder.durability;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.sunder.Patience;
import org.sunder.process.ClassArchive;
import org.sunder.process.StartedService;

/**
 * Round after round many phones log to a service in a process of its own, which is killed at a moment of chance and started again;
 * where its database is another process, that one is killed in every other round, and the service goes on. After each round the
 * phones send again what was not acknowledged, and what was; then each acknowledged test is in the log once, no other is, and
 * every answer is the one that another service works out from an export of the log.
 */
public final class KillRounds {

    /** A database that runs outside of the service. */
    public interface Database {

        /** Ends it at once. */
        void kill();

        /** Starts it again, at the same address. */
        void start();
    }

    private static final int ROUNDS = 2; // a start takes seconds
    private static final int ROUNDS_OF_A_CLUB = 10; // then others fly: what is worked out must not grow with the rounds
    private static final int MEMBERS = 2;
    private static final int MOST_ACKNOWLEDGED = 12; // before the kill
    private static final int LONGEST_WAIT = 40; // milliseconds from the last of these to the kill
    private static final int KILLED_AT_START = 5; // one in so many starts

    private final Path folder;
    private final List<String> settings;
    private final @Nullable Database database;
    private final ClassArchive classes;
    private final Random random;
    private final List<Member> everyone = new ArrayList<>();
    private List<Member> members = List.of();
    private @Nullable StartedService service;
    private String base = "";
    private Duration start = Duration.ZERO;

    private KillRounds(Path folder, List<String> settings, @Nullable Database database, long seed) {
        this.folder = folder;
        this.settings = settings;
        this.database = database;
        this.random = new Random(seed);
        this.classes = new ClassArchive(folder);
    }

    /**
     * Runs a few of them, or {@code -Dsunder.kill.rounds=500}. What was left to chance has a seed, which is printed;
     * {@code -Dsunder.kill.seed=…} gives it again.
     *
     * @param folder for data and log of the service
     * @param settings of the service, besides those of access
     * @param database the database to kill in every other round, or null where it is part of the service
     */
    public static void run(Path folder, List<String> settings, @Nullable Database database) throws Exception {
        int rounds = Integer.getInteger("sunder.kill.rounds", ROUNDS);
        long seed = Long.getLong("sunder.kill.seed", System.nanoTime());
        KillRounds all = new KillRounds(folder, settings, database, seed);
        String what = rounds + " rounds of killing with -Dsunder.kill.seed=" + seed;
        Instant begun = Instant.now();
        try (FreshService fresh = new FreshService(Files.createDirectory(folder.resolve("fresh")))) {
            all.prepare(fresh);
            for (int round = 1; round <= rounds; round++) {
                all.round(round, fresh);
            }
            all.checkEveryone(fresh);
        } catch (Throwable e) {
            throw new AssertionError(what + "\n" + (all.service == null ? "" : all.service.log()), e);
        } finally {
            if (all.service != null) {
                all.service.kill();
            }
        }
        System.out.println(what + ": "
                + all.everyone.stream().mapToInt(Member::acknowledged).sum() + " tests acknowledged, in "
                + Duration.between(begun, Instant.now()).toSeconds() + " s; the last start took " + all.start.toMillis()
                + " ms");
    }

    /** The first start makes the tables and the first key; its end, asked for, leaves the archive of classes. */
    private void prepare(FreshService fresh) throws IOException, InterruptedException {
        start();
        newClub(0);
        checkEveryone(fresh);
        StartedService first = running();
        first.stop();
        first.exitValue();
        start();
    }

    private void round(int round, FreshService fresh) throws IOException, InterruptedException {
        if (round > 1 && round % ROUNDS_OF_A_CLUB == 1) {
            newClub(round);
        }
        AtomicInteger count = new AtomicInteger();
        List<CompletableFuture<Void>> logging = phones().stream()
                .map(phone -> inItsOwnThread(() -> phone.log(count)))
                .toList();
        int enough = random.nextInt(MOST_ACKNOWLEDGED + 1);
        assertThat(Patience.until(
                        () -> count.get() >= enough || oneEnded(logging),
                        running().movement()))
                .as("acknowledged: " + count)
                .isTrue();
        Thread.sleep(random.nextInt(LONGEST_WAIT));
        if (database != null && round % 2 == 0) {
            database.kill();
            logging.forEach(CompletableFuture::join);
            database.start();
            awaitReady();
        } else {
            running().kill();
            logging.forEach(CompletableFuture::join);
            if (random.nextInt(KILLED_AT_START) == 0) {
                startHalfway();
            }
            start();
        }
        phones().stream()
                .map(phone -> inItsOwnThread(phone::sendAgain))
                .toList()
                .forEach(CompletableFuture::join);
        members.stream()
                .map(member -> inItsOwnThread(() -> member.check(fresh)))
                .toList()
                .forEach(CompletableFuture::join);
    }

    private List<Phone> phones() {
        return members.stream().flatMap(member -> member.phones().stream()).toList();
    }

    private static boolean oneEnded(List<CompletableFuture<Void>> logging) {
        return logging.stream().anyMatch(CompletableFuture::isDone);
    }

    /** What one of many does at the same time as the others. */
    @FunctionalInterface
    private interface Work {
        void run() throws IOException, InterruptedException;
    }

    private static CompletableFuture<Void> inItsOwnThread(Work work) {
        return CompletableFuture.runAsync(
                () -> {
                    try {
                        work.run();
                    } catch (IOException | InterruptedException e) {
                        throw new IllegalStateException(e);
                    }
                },
                task -> new Thread(task).start());
    }

    private void newClub(int round) throws IOException {
        Caller keeper = new Caller(
                () -> base,
                Files.readString(folder.resolve("first-admin-key.txt")).trim());
        List<Member> club = new ArrayList<>();
        for (int i = 1; i <= MEMBERS; i++) {
            club.add(new Member(keeper, "round " + round + " flyer " + i, random));
        }
        members = club;
        everyone.addAll(club);
    }

    private void checkEveryone(FreshService fresh) throws IOException {
        for (Member member : everyone) {
            member.check(fresh);
        }
    }

    private StartedService running() {
        StartedService running = service;
        if (running == null) {
            throw new IllegalStateException("nothing was started");
        }
        return running;
    }

    private void start() throws IOException, InterruptedException {
        Instant begun = Instant.now();
        launch();
        base = "http://127.0.0.1:" + running().port();
        awaitReady();
        start = Duration.between(begun, Instant.now());
    }

    private void launch() throws IOException {
        List<String> all = new ArrayList<>(settings);
        all.addAll(List.of("--sunder.access.keys=true", "--sunder.access.requests-per-minute=1000000"));
        service = new StartedService(classes.java(), folder, all.toArray(String[]::new));
    }

    /** Killed once more before it answers. */
    private void startHalfway() throws IOException, InterruptedException {
        launch();
        Thread.sleep(random.nextInt(Math.toIntExact(start.toMillis()) + 1));
        running().kill();
    }

    private void awaitReady() throws InterruptedException {
        assertThat(Patience.until(this::ready, running().movement()))
                .as("ready")
                .isTrue();
    }

    private boolean ready() {
        try {
            return new Caller(() -> base, "").get("/readyz").status() == 200;
        } catch (IOException e) {
            return false;
        }
    }
}

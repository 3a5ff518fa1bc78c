package org.sunder.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.sunder.access.CurrentFlyer;
import org.sunder.airframe.Airframe;
import org.sunder.persistence.DurableTransactions;
import org.sunder.persistence.FleetVersions;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The invented rocket to look around in: an export of our own that is taken in and taken away again. Its rows have the same ids
 * for every flyer; whatever else hangs on it is the flyer's own.
 */
@Service
public class ExampleRocket {

    private static final String JOINTS = "select id from joint where flyer_id = :flyer and airframe_id = :airframe";
    private static final String TESTS =
            "select id from ground_test where flyer_id = :flyer and joint_id in (" + JOINTS + ")";

    private static final String OF_TESTS = "test_id in (" + TESTS + ")";

    /** What hangs on an airframe, table by table, in the order in which it can be removed. */
    private static final Map<String, String> HANGING = Collections.unmodifiableMap(hanging());

    private static Map<String, String> hanging() {
        Map<String, String> hanging = new LinkedHashMap<>();
        hanging.put("ground_test_void", OF_TESTS);
        hanging.put("ground_test", "joint_id in (" + JOINTS + ")");
        hanging.put("load_out", "airframe_id = :airframe");
        hanging.put("setup", "joint_id in (" + JOINTS + ")");
        hanging.put("joint", "airframe_id = :airframe");
        hanging.put("airframe", "id = :airframe");
        return hanging;
    }

    private final Import taking;
    private final DurableTransactions transactions;
    private final FleetVersions versions;
    private final JdbcClient jdbc;
    private final CurrentFlyer flyer;
    private final JsonMapper json;

    ExampleRocket(
            Import taking,
            DurableTransactions transactions,
            FleetVersions versions,
            JdbcClient jdbc,
            CurrentFlyer flyer,
            JsonMapper json) {
        this.taking = taking;
        this.transactions = transactions;
        this.versions = versions;
        this.jdbc = jdbc;
        this.flyer = flyer;
        this.json = json;
    }

    /**
     * What a flyer hung on the example.
     *
     * @param joints joints added to it
     * @param setups setups, those of such joints too
     * @param tests firings logged
     * @param loadOuts load-outs described
     * @param marks marks that a firing does not count, or counts again
     * @param photos photos of firings, the invented ones' too
     */
    public record Own(int joints, int setups, int tests, int loadOuts, int marks, int photos) {

        /** Whether there is nothing. */
        public boolean none() {
            return joints + setups + tests + loadOuts + marks + photos == 0;
        }
    }

    /** Adds it, unless it is there. */
    public void add() {
        if (there()) {
            return;
        }
        try (InputStream example = document()) {
            taking.take(flyer.id(), example);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether the flyer has it. */
    public boolean there() {
        return !rows("airframe").isEmpty();
    }

    /** What of the flyer's own hangs on it. */
    public Own own() {
        Set<UUID> invented = invented();
        Map<String, Integer> own = new HashMap<>();
        HANGING.keySet()
                .forEach(table -> own.put(table, (int) rows(table).stream()
                        .filter(id -> !invented.contains(id))
                        .count()));
        return new Own(
                own.getOrDefault("joint", 0),
                own.getOrDefault("setup", 0),
                own.getOrDefault("ground_test", 0),
                own.getOrDefault("load_out", 0),
                own.getOrDefault("ground_test_void", 0),
                photos());
    }

    /**
     * Removes it with all that hangs on it, as long as nothing of the flyer's own hangs on it but what the flyer agreed to.
     *
     * @param agreed what may go along
     * @return whether it was removed
     */
    public boolean takeAway(Own agreed) {
        UUID owner = flyer.id();
        return transactions.commit(() -> {
            versions.advance(owner);
            if (!own().equals(agreed)) {
                return false;
            }
            remove(owner, "photo", OF_TESTS);
            HANGING.forEach((table, hangs) -> remove(owner, table, hangs));
            return true;
        });
    }

    private void remove(UUID owner, String table, String hangs) {
        jdbc.sql("delete from " + table + " where flyer_id = :flyer and " + hangs)
                .param("flyer", owner)
                .param("airframe", Airframe.EXAMPLE)
                .update();
    }

    /** How many photos there are of its firings; none of them came with it. */
    private int photos() {
        return jdbc.sql("select count(*) from photo where flyer_id = :flyer and " + OF_TESTS)
                .param("flyer", flyer.id())
                .param("airframe", Airframe.EXAMPLE)
                .query(Integer.class)
                .single();
    }

    private List<UUID> rows(String table) {
        return jdbc.sql("select id from " + table + " where flyer_id = :flyer and " + HANGING.get(table))
                .param("flyer", flyer.id())
                .param("airframe", Airframe.EXAMPLE)
                .query(UUID.class)
                .list();
    }

    private Set<UUID> invented() {
        try (InputStream example = document()) {
            Set<UUID> ids = new HashSet<>();
            for (JsonNode row : json.readTree(example).findParents("id")) {
                ids.add(UUID.fromString(row.path("id").asString()));
            }
            return Set.copyOf(ids);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream document() throws IOException {
        return new ClassPathResource("example.json").getInputStream();
    }
}

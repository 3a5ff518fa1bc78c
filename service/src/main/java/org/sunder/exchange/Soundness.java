package org.sunder.exchange;

import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.sunder.airframe.SetupPhysics;

/** What must hold of a flyer's rows beyond the form of each value. */
@Component
class Soundness {

    private record Rule(String sql, String words) {}

    private static final List<Rule> RULES = List.of(
            new Rule(
                    "select j.id from joint j left join setup s on s.flyer_id = j.flyer_id and s.joint_id = j.id"
                            + " where j.flyer_id = ? group by j.id, j.current_revision"
                            + " having count(s.id) <> j.current_revision or max(s.revision) <> j.current_revision",
                    "the joint must have each revision of its setup up to the one in force"),
            new Rule(
                    "select t.id from ground_test t join setup s on s.flyer_id = t.flyer_id and s.id = t.setup_id"
                            + " where t.flyer_id = ? and (s.joint_id <> t.joint_id or s.revision <> t.setup_revision)",
                    "the test must name a setup of its joint"),
            new Rule(
                    "select test_id from ground_test_void where flyer_id = ? group by test_id"
                            + " having count(*) <> max(sequence) + 1",
                    "the voids of the test must be numbered from 0"),
            new Rule(
                    "select b.id from pin_batch b left join pull_test p on p.flyer_id = b.flyer_id and p.batch_id = b.id"
                            + " where b.flyer_id = ? group by b.id, b.pulls"
                            + " having count(p.id) <> b.pulls or max(p.sequence) <> b.pulls - 1",
                    "the batch must have each of its pull tests"));

    private final JdbcClient jdbc;
    private final SetupPhysics physics;

    Soundness(JdbcClient jdbc, SetupPhysics physics) {
        this.jdbc = jdbc;
        this.physics = physics;
    }

    /**
     * Refuses, by throwing, a setup that cannot be.
     *
     * @param at JSON pointer of its document
     */
    void check(String at, String document) {
        try {
            physics.of(Documents.setup(document), at);
        } catch (IllegalArgumentException e) {
            throw Import.fault(at, "the setup is unsound", "a setup whose contents fit");
        }
    }

    /** Refuses, by throwing, rows that do not belong together. */
    void check(UUID flyer) {
        for (Rule rule : RULES) {
            List<UUID> broken =
                    jdbc.sql(rule.sql()).params(flyer).query(UUID.class).list();
            if (!broken.isEmpty()) {
                throw Import.fault(broken.get(0).toString(), rule.words(), rule.words());
            }
        }
    }
}

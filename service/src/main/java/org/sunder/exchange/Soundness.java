package org.sunder.exchange;

import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.sunder.airframe.LoadOuts;
import org.sunder.photo.Photos;
import org.sunder.stock.PinBatch;
import org.sunder.stock.PinBatches;

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
                    "select test_id from ground_test_void where flyer_id = ? and voided <> (mod(sequence, 2) = 0)",
                    "a test is voided, then restored, then voided again"),
            new Rule(
                    "select b.id from pin_batch b left join pull_test p on p.flyer_id = b.flyer_id and p.batch_id = b.id"
                            + " where b.flyer_id = ? group by b.id, b.pulls"
                            + " having count(p.id) <> b.pulls or max(p.sequence) <> b.pulls - 1",
                    "the batch must have each of its pull tests"),
            new Rule(
                    "select batch_id from pull_test where flyer_id = ? group by batch_id"
                            + " having max(case when left_out then 1 else 0 end) = 1"
                            + " and sum(case when left_out then 0 else 1 end) < " + PinBatch.FEWEST,
                    "at least " + PinBatch.FEWEST + " pulls of a batch must count"),
            new Rule(
                    "select id from pin_batch where flyer_id = ? and pulls > " + PinBatches.MOST_PULLS,
                    "a batch takes " + PinBatches.MOST_PULLS + " pull tests at most"),
            new Rule(
                    "select airframe_id from load_out where flyer_id = ? group by airframe_id having count(*) > "
                            + LoadOuts.MOST,
                    "an airframe takes " + LoadOuts.MOST + " load-outs at most"),
            new Rule(
                    "select flyer_id from photo where flyer_id = ? group by flyer_id having count(*) > " + Photos.MOST
                            + " or sum(bytes) > " + Photos.MOST_BYTES,
                    "a flyer keeps " + Photos.MOST + " photos at most, of 500 MB together"));

    private final JdbcClient jdbc;

    Soundness(JdbcClient jdbc) {
        this.jdbc = jdbc;
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

package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.bittern;
import static org.sunder.engine.physics.Setups.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.Content.Intrusion;

class InsertionTest {

    private final JointSetup booster =
            Setups.tube(92, 400, 200).withContents(List.of(new Intrusion("bay aft", mm(60), mm(92))));

    /** In a tube each millimetre of a full-width bay takes one millimetre of tube: elementary. */
    @Test
    void everyMillimetrePushedInTakesAMillimetreOfTube() {
        InsertionTable table = InsertionTable.of(booster, 0, InsertionTable.steps(mm(0), mm(100), 11));
        double area = Math.PI / 4 * 0.092 * 0.092;
        assertThat(table.rows()).hasSize(11).allSatisfy(row -> {
            assertThat(row.freeVolume()).isCloseTo(area * (0.4 - row.depth()), within(1e-12));
            assertThat(row.handbookCharge()).isCloseTo(200 / area * row.freeVolume() / 219_048.2, within(1e-8));
        });
    }

    @Test
    void depthsThatLeaveNoRoomAreNamed() {
        InsertionTable table = InsertionTable.of(bittern(), 0, List.of(mm(45), mm(400), mm(700)));
        assertThat(table.rows()).hasSize(1);
        assertThat(table.refused()).hasSize(2).first().isEqualTo(0.4);
    }

    @Test
    void theBayMovesIntoTheBoosterAsFarAsThereIsRoom() {
        BayShift shift = BayShift.farthest(bittern(), 0, booster, 0, mm(30));
        assertThat(shift.farthest()).isCloseTo(0.030, within(1e-12));
        assertThat(shift.first().freeVolume())
                .isGreaterThan(JointPhysics.of(bittern()).freeVolume());
        assertThat(shift.second().freeVolume()).isCloseTo(Math.PI / 4 * 0.092 * 0.092 * 0.310, within(1e-9));
        assertThat(BayShift.farthest(bittern(), 0, booster, 0, mm(90)).farthest())
                .isCloseTo(0.045, within(1e-12));
    }

    @Test
    void refusesAContentThatIsNoIntrusion() {
        assertThatThrownBy(() -> InsertionTable.of(bittern(), 1, List.of()))
                .isInstanceOf(UnsoundSetupException.class)
                .hasMessageContaining("contents[1]");
    }
}

package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.bittern;
import static org.sunder.engine.physics.Setups.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.physics.charge.BayShift;
import org.sunder.engine.physics.charge.InsertionTable;
import org.sunder.engine.physics.charge.InsertionTable.Fits;
import org.sunder.engine.physics.charge.InsertionTable.FitsNot;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;

class InsertionTest {

    private final JointSetup booster =
            Setups.tube(92, 400, 200).withContents(List.of(new Intrusion("bay aft", mm(60), mm(92))));

    /** In a tube each millimetre of a full-width bay takes one millimetre of tube: elementary. */
    @Test
    void everyMillimetrePushedInTakesAMillimetreOfTube() {
        InsertionTable table = InsertionTable.of(booster, 0, InsertionTable.steps(mm(0), mm(100), 11));
        double area = Math.PI / 4 * 0.092 * 0.092;
        assertThat(table.rows()).hasSize(11).allSatisfy(row -> {
            Fits fits = (Fits) row;
            assertThat(fits.freeVolume()).isCloseTo(area * (0.4 - row.depth()), within(1e-12));
            assertThat(fits.handbookCharge()).isCloseTo(200 / area * fits.freeVolume() / 219_048.2, within(1e-8));
        });
    }

    /** The nose narrows to 91.1 mm, a hundredth less than the bay, at 62 mm; 580 mm are its whole depth. */
    @Test
    void depthsThatCannotBeStandInTheirPlaceWithTheReason() {
        InsertionTable table = InsertionTable.of(bittern(), 0, List.of(mm(700), mm(45), mm(75)));
        assertThat(table.rows()).hasSize(3);
        assertThat(table.rows().get(1)).isInstanceOf(Fits.class);
        assertThat(table.rows().get(2)).isInstanceOfSatisfying(FitsNot.class, row -> {
            assertThat(row.depth()).isEqualTo(0.075);
            assertThat(row.why()).startsWith("bay pushed in is 92 mm wide, but the cavity only 90.6");
        });
        assertThat(table.rows().get(0))
                .isInstanceOfSatisfying(
                        FitsNot.class, row -> assertThat(row.why()).contains("deeper than the cavity"));
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

    /** From 45 mm to the 62 mm where the nose has narrowed by a hundredth. */
    @Test
    void theBayMovesIntoANoseOnlyAsFarAsThatIsWideEnough() {
        BayShift shift = BayShift.farthest(booster, 0, bittern(), 0, mm(60));
        assertThat(shift.farthest()).isBetween(0.016, 0.018);
    }

    @Test
    void refusesAContentThatIsNoIntrusion() {
        assertThatThrownBy(() -> InsertionTable.of(bittern(), 1, List.of()))
                .isInstanceOf(UnsoundSetupException.class)
                .hasMessageContaining("contents[1]");
    }
}

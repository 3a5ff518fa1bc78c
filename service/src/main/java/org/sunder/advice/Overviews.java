package org.sunder.advice;

import java.util.UUID;
import org.springframework.stereotype.Service;
import org.sunder.picture.ChargeRuler;
import org.sunder.picture.SideView;

/** What pages show of a fleet. */
@Service
public class Overviews {

    private final FleetSnapshots fleets;
    private final Standings standings;
    private final Advising advising;
    private final ChargeRulers rulers;
    private final SideViews views;

    Overviews(FleetSnapshots fleets, Standings standings, Advising advising, ChargeRulers rulers, SideViews views) {
        this.fleets = fleets;
        this.standings = standings;
        this.advising = advising;
        this.rulers = rulers;
        this.views = views;
    }

    /** The fleet as it stands. */
    public Overview now() {
        return new Overview(fleets.current(), this);
    }

    SideView view(FleetSnapshot fleet, UUID airframeId) {
        return views.of(fleet, airframeId);
    }

    LadderAdvice ladder(FleetSnapshot fleet, UUID jointId, int depth) {
        return advising.ladder(fleet, jointId, depth);
    }

    ChargeRuler ruler(FleetSnapshot fleet, UUID jointId) {
        return rulers.of(fleet, jointId);
    }

    JointAnswer answer(FleetSnapshot fleet, LoggedJoint logged) {
        boolean sound = logged.finding().isEmpty();
        UUID id = logged.joint().id();
        return new JointAnswer(
                standings.standing(fleet, logged),
                sound ? advising.next(fleet, id) : null,
                sound ? rulers.of(fleet, id) : null,
                logged.tests());
    }
}

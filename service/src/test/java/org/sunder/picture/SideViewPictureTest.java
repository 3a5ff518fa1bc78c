package org.sunder.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.engine.planning.Evidence;
import org.sunder.picture.SideView.Cut;
import org.sunder.picture.SideView.Element;
import org.sunder.picture.SideView.Inside;
import org.sunder.picture.SideView.Kind;
import org.sunder.picture.SideView.Part;
import org.sunder.picture.SideView.Station;

/** The side view: where things stand, worked by hand, and what holds at any width. */
class SideViewPictureTest {

    private static final List<Evidence> STATES = List.copyOf(EnumSet.allOf(Evidence.class));

    /** 1 m long and 100 mm thick: 400 mm of nose, the joint, 600 mm of tube that holds 100 mm of the nose's coupler. */
    private static final SideView METRE = new SideView(
            "Bittern",
            List.of(
                    nose(true),
                    cut("a", "nose to booster", Evidence.BUILDING),
                    Part.straight(Kind.TUBE, 0.6, 0.05, true)));

    @Test
    void itIsDrawnToScale() {
        // 412 px less 6 on either side are 400 px for 1 m.
        Drawn drawn = drawn(METRE, 412);
        var tube = Drawn.bounds(drawn.one("tube"));
        assertThat(tube.left()).isCloseTo(6 + 160, within(0.06));
        assertThat(tube.right()).isCloseTo(6 + 400, within(0.06));
        assertThat(tube.bottom() - tube.top()).isCloseTo(40, within(0.11));
        assertThat(Drawn.number(drawn.one("cut"), "x1")).isCloseTo(166, within(0.06));
        var tip = Drawn.bounds(drawn.one("nose"));
        assertThat(tip.left()).isCloseTo(6, within(0.06));
        assertThat(tip.right()).isCloseTo(166, within(0.06));
    }

    @Test
    void aShortOneIsNotDrawnHuge() {
        // 0.2 m thick and 1 m long: at 400 px a metre it would be 80 px thick; 16 % of 412 px are 65.9.
        SideView thick = new SideView("Thick", List.of(Part.straight(Kind.TUBE, 1, 0.1, true)));
        var tube = Drawn.bounds(drawn(thick, 412).one("tube"));
        assertThat(tube.bottom() - tube.top()).isCloseTo(65.9, within(0.15));
        assertThat((tube.left() + tube.right()) / 2).isCloseTo(206, within(0.1));
    }

    @Test
    void aChosenJointOpensAndShowsWhatIsPushedIn() {
        // A gap of 1.3 times 100 mm makes it 1.13 m: 353.98 px a metre.
        Drawn drawn = drawn(METRE.opened("a"), 412);
        assertThat(Drawn.bounds(drawn.one("nose")).right()).isCloseTo(6 + 0.4 * 353.98, within(0.1));
        assertThat(Drawn.bounds(drawn.one("tube")).left()).isCloseTo(6 + 0.53 * 353.98, within(0.1));
        assertThat(Drawn.number(drawn.one("inside"), "x")).isCloseTo(6 + 0.4 * 353.98, within(0.1));
        assertThat(Drawn.number(drawn.one("inside"), "width")).isCloseTo(35.4, within(0.1));
        assertThat(drawn.description()).contains("nose to booster: evidence building, drawn opened");
        assertThat(drawn(METRE, 412).all("inside")).isEmpty();
        assertThat(drawn(METRE.opened("another"), 412).all("inside")).isEmpty();
    }

    @Test
    void whatIsNotDescribedIsDashedAndSaid() {
        SideView plain = new SideView("Bittern", List.of(nose(true), Part.straight(Kind.TAIL, 0.4, 0.05, false)));
        Drawn drawn = drawn(plain, 412);
        assertThat(drawn.all("plain")).hasSize(3).allMatch(part -> part.hasAttribute("stroke-dasharray"));
        assertThat(drawn.one("nose").hasAttribute("stroke-dasharray")).isFalse();
        assertThat(drawn.description())
                .isEqualTo("Drawn to scale from its setups, nose at the left. No joint is described yet. Not described"
                        + " and so drawn plain, at a length that is only a guess: motor end.");
        assertThat(drawn.one("note").getTextContent()).isEqualTo("Dashed: not described yet");
        assertThat(drawn(METRE, 412).all("note")).isEmpty();
    }

    @Test
    void everyStateHasItsOwnShapeAndWord() {
        Set<String> shapes = new HashSet<>();
        for (Evidence evidence : Evidence.values()) {
            Drawn drawn = drawn(new SideView("Bittern", List.of(nose(true), cut("a", "joint", evidence))), 640);
            assertThat(drawn.one("state").getTextContent()).isEqualTo(evidence.toString());
            var paths = drawn.one("evidence").getElementsByTagName("path");
            StringBuilder shape = new StringBuilder();
            for (int i = 0; i < paths.getLength(); i++) {
                shape.append(((org.w3c.dom.Element) paths.item(i)).getAttribute("d"));
            }
            shapes.add(shape.toString());
        }
        assertThat(shapes).hasSize(Evidence.values().length);
    }

    @Test
    void jointsMayBeLinks() {
        Drawn drawn = drawn(METRE.linked(id -> "/joints/" + id + "?a=1&b=2"), 412);
        var link = drawn.one("joint");
        assertThat(link.getTagName()).isEqualTo("a");
        assertThat(link.getAttribute("href")).isEqualTo("/joints/a?a=1&b=2");
        assertThat(link.getAttribute("aria-label")).isEqualTo("Joint A, nose to booster: evidence building");
        // Nothing inside an image can be reached, so with links it is none.
        assertThat(drawn.picture().getDocumentElement().getAttribute("role")).isEqualTo("group");
        assertThat(drawn(METRE, 412).picture().getDocumentElement().getAttribute("role"))
                .isEqualTo("img");
    }

    @Test
    void namesAreOnlyText() {
        String name = "</svg><script>alert('&\"')</script>";
        SideView view = new SideView(name, List.of(nose(true), cut("a", name, Evidence.NONE)));
        Drawn drawn = drawn(view.linked(id -> "/" + name), 1440);
        assertThat(drawn.title()).isEqualTo(name + " in side view");
        assertThat(drawn.one("name").getTextContent()).isEqualTo(name);
        assertThat(drawn.picture().getElementsByTagName("script").getLength()).isZero();
    }

    @Test
    void aLongNameIsCutButSaidInFull() {
        String name = "the very long name of a joint between the payload tube and the avionics bay";
        Drawn drawn = drawn(new SideView("Bittern", List.of(nose(true), cut("a", name, Evidence.STALE))), 320);
        assertThat(drawn.one("name").getTextContent())
                .startsWith("the very long")
                .endsWith("…");
        assertThat(drawn.description()).contains(name);
        drawn.isLegible();
    }

    @ParameterizedTest
    @ValueSource(ints = {240, 320, 360, 640, 960, 1440})
    void labelsKeepClearOfEachOther(int width) {
        for (int joints = 0; joints <= 6; joints++) {
            List<Element> elements = new ArrayList<>(List.of(nose(joints % 2 == 0)));
            for (int i = 0; i < joints; i++) {
                elements.add(
                        cut("j" + i, i % 2 == 0 ? "bay to booster" : "nose to bay", STATES.get(i % STATES.size())));
                elements.add(Part.straight(Kind.BAY, 0.03 + 0.05 * i, 0.05, false));
            }
            elements.add(Part.straight(Kind.TAIL, 0.35, 0.05, false));
            SideView view = new SideView("Bittern", elements);
            for (SideView each : List.of(view, view.opened("j0"), view.opened("j1"))) {
                Drawn drawn = drawn(each, width);
                drawn.isLegible();
                List<Drawn.Box> plates = drawn.all("plate").stream()
                        .map(SideViewPictureTest::box)
                        .collect(Collectors.toList());
                assertThat(plates).hasSize(joints);
                for (int i = 0; i < plates.size(); i++) {
                    assertThat(plates.subList(0, i)).noneMatch(plates.get(i)::touches);
                }
                for (org.w3c.dom.Element part : drawn.all("part")) {
                    var box = part.getTagName().equals("rect") ? box(part) : Drawn.bounds(part);
                    assertThat(box.left()).isGreaterThanOrEqualTo(0);
                    assertThat(box.right()).isLessThanOrEqualTo(width);
                    assertThat(box.top()).isGreaterThanOrEqualTo(0);
                    assertThat(box.bottom()).isLessThanOrEqualTo(drawn.height());
                    assertThat(plates).noneMatch(box::touches);
                }
            }
        }
    }

    private static Drawn.Box box(org.w3c.dom.Element rectangle) {
        double x = Drawn.number(rectangle, "x");
        double y = Drawn.number(rectangle, "y");
        return new Drawn.Box("", x, y, x + Drawn.number(rectangle, "width"), y + Drawn.number(rectangle, "height"));
    }

    private static Part nose(boolean described) {
        return new Part(
                Kind.NOSE, List.of(new Station(0, 0), new Station(0.2, 0.035), new Station(0.4, 0.05)), described);
    }

    private static Cut cut(String id, String name, Evidence evidence) {
        return new Cut(id, name, evidence, new Inside(0.1, 0.048, true), false, null);
    }

    private static Drawn drawn(SideView view, int width) {
        return Drawn.of(SideViewPicture.of(view, width));
    }
}

package endfloat.picture.drawing;

import endfloat.picture.SvgWriter.Anchor;

/** Shafts that bend and twist, round plates and panels. */
final class ShaftDrawings {
  private ShaftDrawings() {}

  static void addTo(Drawings.Register to) {
    to.put(
        "A stepped shaft of segments on two bearings with a load: places count from the left end;"
            + " deflection is positive in the direction of the loads.",
        ShaftDrawings::stepped,
        "stepped_shaft");
    to.put(
        "A beam between its two ends with a force, a spread load and a couple: places count from"
            + " the left end.",
        ShaftDrawings::beam,
        "beam");
    to.put(
        "A stepped shaft twisted by a torque: each segment has its length, outer diameter and bore.",
        ShaftDrawings::twist,
        "shaft_twist");
    to.put(
        "Shafts joined by gears: the twist of each is referred to the first by the ratio.",
        ShaftDrawings::geared,
        "twist_through_gears");
    to.put(
        "A round plate in section under pressure or a force: the edge is simple, fixed or free.",
        ShaftDrawings::plate,
        "circular_plate");
    to.put(
        "A round plate with a central hole in section, loaded all round on a ring; deflection"
            + " along the load is positive.",
        ShaftDrawings::annular,
        "annular_plate");
    to.put(
        "A flat round panel with a rigid hub in section: a thrust moves the hub along the shaft, a"
            + " couple tilts it.",
        ShaftDrawings::panel,
        "panel_stiffness");
    to.put(
        "A panel pushed along the shaft: the thrust and what a coupling adds, away from the apex"
            + " positive, bow it and let the shaft move.",
        ShaftDrawings::opening,
        "axial_opening");
  }

  private static Sketch shaft(Sketch s) {
    s.body(
        20, 92, 80, 92, 80, 82, 200, 82, 200, 92, 300, 92, 300, 116, 200, 116, 200, 126, 80, 126,
        80, 116, 20, 116);
    return s.centre(8, 104, 312, 104);
  }

  private static Sketch bearing(Sketch s, double x, double y) {
    return s.body(x, y, x - 10, y + 16, x + 10, y + 16).hatch(x - 12, y + 16, x + 12, y + 22);
  }

  private static void stepped(Sketch s) {
    shaft(s);
    bearing(s, 50, 116);
    bearing(s, 270, 116);
    s.arrow(140, 40, 140, 80);
    s.dimension(20, 66, 50, 66, "at").thin(20, 60, 20, 92).thin(50, 60, 50, 92);
    s.named(150, 104, 166, 156, "segments").named(50, 128, 64, 172, "bearings");
    s.named(148, 56, Anchor.START, "loads").words(148, 72, Anchor.START, "deflection + this way");
  }

  private static void beam(Sketch s) {
    s.body(30, 96, 290, 96, 290, 112, 30, 112).hatch(16, 78, 30, 130).outline(30, 78, 30, 130);
    bearing(s, 282, 112);
    s.acts(110, 50, 110, 94, "force").named(20, 66, Anchor.START, "left");
    for (int i = 0; i < 6; i++) {
      s.thin(160 + 18 * i, 78, 160 + 18 * i, 94);
    }
    s.thin(160, 78, 250, 78)
        .named(205, 72, Anchor.MIDDLE, "spread")
        .named(300, 66, Anchor.END, "right");
    s.dimension(30, 150, 110, 150, "force_at").thin(110, 112, 110, 156);
    s.dimension(30, 182, 290, 182, "length").thin(30, 130, 30, 188).thin(290, 112, 290, 188);
  }

  private static void twist(Sketch s) {
    shaft(s);
    s.hidden(20, 100, 300, 100).hidden(20, 108, 300, 108);
    s.dimension(80, 164, 200, 164, "length").thin(80, 126, 80, 170).thin(200, 126, 200, 170);
    s.dimension(150, 126, 150, 82, "outer").named(240, 104, 256, 150, "inner");
    s.arrow(306, 60, 306, 86).named(300, 54, Anchor.END, "torque");
  }

  private static void geared(Sketch s) {
    s.body(20, 60, 150, 60, 150, 74, 20, 74).body(150, 40, 164, 40, 164, 94, 150, 94);
    s.body(150, 96, 164, 96, 164, 178, 150, 178).body(164, 130, 300, 130, 300, 144, 164, 144);
    s.named(100, 67, 112, 120, "shafts")
        .arrow(16, 96, 16, 76)
        .named(8, 112, Anchor.START, "torque");
    s.leader(157, 95, 200, 90, "ratio").words(240, 122, Anchor.MIDDLE, "stiffness");
  }

  private static Sketch edges(Sketch s) {
    s.section(20, 96, 44, 130).section(276, 96, 300, 130);
    return s.centre(160, 24, 160, 190);
  }

  private static void plate(Sketch s) {
    edges(s).body(30, 96, 290, 96, 290, 84, 30, 84);
    for (int i = 0; i < 9; i++) {
      s.thin(56 + 26 * i, 62, 56 + 26 * i, 82);
    }
    s.thin(56, 62, 264, 62)
        .named(80, 54, Anchor.MIDDLE, "pressure")
        .acts(160, 30, 160, 60, "force");
    s.dimension(160, 168, 290, 168, "radius").thin(290, 130, 290, 174);
    s.dimension(120, 96, 120, 84, "thickness").named(32, 112, 50, 150, "edge");
  }

  private static void annular(Sketch s) {
    edges(s).section(30, 84, 120, 96).section(200, 84, 290, 96);
    s.acts(230, 40, 230, 82, "ring_force").dimension(160, 60, 230, 60, "ring_radius");
    s.dimension(160, 132, 200, 132, "inner_radius").thin(200, 96, 200, 138);
    s.dimension(160, 176, 290, 176, "outer_radius").thin(290, 130, 290, 182);
    s.named(32, 112, 50, 152, "outer_edge").named(120, 90, 100, 60, "inner_edge");
  }

  private static void panel(Sketch s) {
    edges(s)
        .section(30, 84, 130, 96)
        .section(190, 84, 290, 96)
        .body(130, 70, 190, 70, 190, 110, 130, 110);
    s.arrow(160, 30, 160, 66).words(168, 42, Anchor.START, "thrust");
    s.words(160, 94, Anchor.MIDDLE, "rigid hub").named(32, 112, 50, 152, "rim");
    s.dimension(160, 136, 190, 136, "hub_radius").thin(190, 110, 190, 142);
    s.dimension(160, 176, 290, 176, "outer_radius").thin(290, 130, 290, 182);
    s.named(80, 90, 70, 60, "thickness");
  }

  private static void opening(Sketch s) {
    s.centre(10, 104, 310, 104).section(150, 14, 160, 40).section(150, 168, 160, 194);
    s.hidden(155, 40, 155, 168).outline(155, 40, 172, 84).outline(155, 168, 172, 124);
    s.body(60, 94, 260, 94, 260, 114, 60, 114).body(168, 80, 180, 80, 180, 128, 168, 128);
    s.acts(262, 104, 306, 104, "force").named(306, 128, Anchor.END, "coupling");
    s.dot(30, 104).words(30, 122, Anchor.MIDDLE, "apex").named(164, 56, 190, 40, "stiffness");
    s.thin(155, 180, 155, 196)
        .thin(172, 132, 172, 196)
        .words(178, 192, Anchor.START, "how far the shaft moves");
  }
}

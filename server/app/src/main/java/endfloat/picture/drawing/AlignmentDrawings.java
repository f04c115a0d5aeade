package endfloat.picture.drawing;

import endfloat.picture.SvgWriter.Anchor;

/** Shafts in and out of line, dials on couplings, dowels. */
final class AlignmentDrawings {
  private AlignmentDrawings() {}

  static void addTo(Drawings.Register to) {
    to.put(
        "Two shafts that meet at a coupling: heights of the shaft centre at the front and the rear"
            + " of its span over the line of the other shaft; above it is positive.",
        AlignmentDrawings::misalignment,
        "coupling_misalignment");
    to.put(
        "A toothed coupling whose shafts are tilted: torque acts at the pitch radius, and the driven"
            + " shaft may be driven endways; from the driver towards the driven shaft is positive.",
        AlignmentDrawings::thrust,
        "coupling_thrust");
    to.put(
        "A loaded spline: friction at the pitch radius holds the shaft endways up to a bound, in"
            + " either direction.",
        AlignmentDrawings::spline,
        "spline_axial_force");
    to.put(
        "Two coupling faces that gape at the top: the difference of the gaps across the diameter"
            + " is the angle between the shafts.",
        AlignmentDrawings::gap,
        "gap_angle");
    to.put(
        "Rim and face method: the bracket stands on the movable half, the dials touch rim and face of the fixed half. Distances to the feet count from the rim dial. A positive shim"
            + " raises the foot.",
        AlignmentDrawings::rimAndFace,
        "shaft_alignment");
    to.put(
        "Double rim method: one dial touches the rim of the fixed half, one that of the movable"
            + " half, a span apart. A positive shim raises the foot.",
        AlignmentDrawings::doubleRim,
        "shaft_alignment_double_rim");
    to.put(
        "A dial gauge on a round part that turns out of centre: the run-out is twice the"
            + " eccentricity.",
        AlignmentDrawings::eccentric,
        "eccentricity_from_dial",
        "run_out");
    to.put(
        "A face that stands askew by a small angle: a dial gauge on its rim reads the run-out of"
            + " the face in one turn.",
        AlignmentDrawings::face,
        "face_run_out");
    to.put(
        "Bores in a row: offsets of their centres from one datum at their positions along it, and the straight line fitted to them.",
        AlignmentDrawings::bores,
        "bore_line");
    to.put(
        "Heights of a surface at places along it, between the two lines that hold it.",
        AlignmentDrawings::surface,
        "straightness");
    to.put(
        "A stepped dowel: its upper part is off the lower by the offset, which is turned into the"
            + " direction in which the cover must go. x to the right and y upwards are positive.",
        AlignmentDrawings::offsetDowel,
        "offset_dowel",
        "offset_dowel_shift",
        "offset_dowel_error");
    to.put(
        "Two dowel holes out of line by a shift, and the least hole that cleans up both, with a"
            + " cleaning allowance all round.",
        AlignmentDrawings::oversizeDowel,
        "oversize_dowel");
    to.put(
        "A cover on two dowels a distance apart along x: each dowel hole is out of line in x and y,"
            + " which shifts and turns the cover.",
        AlignmentDrawings::cover,
        "cover_shift");
    to.put(
        "A cover on two dowels a distance apart: the clearance at both lets it swing from one stop"
            + " to the other.",
        AlignmentDrawings::play,
        "dowel_play");
  }

  private static void misalignment(Sketch s) {
    s.centre(10, 130, 310, 130);
    s.body(16, 118, 120, 118, 120, 142, 16, 142).words(66, 162, Anchor.MIDDLE, "reference shaft");
    s.body(150, 104, 300, 72, 305, 92, 155, 124).centre(136, 118, 314, 80);

    s.dimensionOf(180, 130, 180, 108, "").named(176, 152, Anchor.MIDDLE, "front_height");
    s.dimension(248, 130, 248, 92, "rear_height");
    s.dimension(180, 182, 248, 182, "span").thin(180, 158, 180, 186).thin(248, 130, 248, 186);
    s.dimension(136, 52, 180, 52, "overhang").thin(136, 46, 136, 128).thin(180, 46, 180, 104);
    s.words(136, 26, Anchor.MIDDLE, "plane of the coupling");
  }

  private static void thrust(Sketch s) {
    s.centre(10, 110, 310, 110).body(16, 98, 110, 98, 110, 122, 16, 122);
    s.body(110, 66, 150, 66, 150, 154, 110, 154)
        .hidden(118, 74, 150, 74)
        .hidden(118, 146, 150, 146);
    s.body(124, 78, 156, 74, 162, 138, 130, 142).body(160, 96, 300, 80, 303, 104, 162, 120);
    s.centre(120, 112, 314, 90);
    s.angle(130, 110, 150, -7, 0, "tilt");
    s.dimension(70, 110, 70, 66, "pitch_radius").thin(64, 66, 112, 66);
    s.arrow(216, 160, 270, 160)
        .words(243, 150, Anchor.MIDDLE, "+")
        .words(30, 186, Anchor.START, "driver");
    s.words(250, 60, Anchor.START, "driven").named(20, 70, Anchor.START, "torque");
  }

  private static void spline(Sketch s) {
    s.centre(10, 104, 310, 104).body(20, 84, 200, 84, 200, 124, 20, 124);
    for (int i = 0; i < 4; i++) {
      s.thin(110, 90 + 9 * i, 200, 90 + 9 * i);
    }
    s.section(120, 54, 230, 84).section(120, 124, 230, 154).outline(230, 54, 230, 154);
    s.dimension(60, 104, 60, 84, "pitch_radius").acts(20, 168, 20, 140, "torque");
    s.arrow(246, 96, 296, 96).arrow(296, 112, 246, 112);
    s.words(272, 84, Anchor.MIDDLE, "held, either way")
        .named(150, 180, 176, 186, "friction")
        .thin(150, 180, 150, 84);
  }

  private static void gap(Sketch s) {
    s.centre(10, 104, 150, 104).body(20, 92, 110, 92, 110, 116, 20, 116);
    s.body(110, 44, 140, 44, 140, 164, 110, 164).body(176, 40, 206, 46, 186, 164, 156, 158);
    s.body(204, 94, 300, 110, 296, 134, 200, 118);
    s.dimension(40, 164, 40, 44, "diameter").thin(36, 44, 110, 44).thin(36, 164, 110, 164);
    s.leader(158, 44, 214, 22, "gap at the top").leader(148, 158, 214, 184, "gap at the bottom");
    s.named(150, 24, Anchor.END, "gap_difference");
  }

  private static Sketch halves(Sketch s) {
    s.centre(6, 120, 314, 120);
    s.body(10, 110, 84, 110, 84, 130, 10, 130).body(84, 90, 98, 90, 98, 150, 84, 150);
    s.body(112, 90, 126, 90, 126, 150, 112, 150).body(126, 110, 306, 110, 306, 130, 126, 130);
    s.outline(190, 130, 190, 152, 178, 152, 206, 152)
        .outline(280, 130, 280, 152, 268, 152, 296, 152);
    return s.words(46, 168, Anchor.MIDDLE, "fixed")
        .words(240, 172, Anchor.MIDDLE, "movable, on its feet");
  }

  private static void rimAndFace(Sketch s) {
    halves(s);
    s.outline(119, 90, 119, 50, 91, 50, 91, 57).circle(91, 66, 9).thin(91, 75, 91, 90);
    s.named(91, 66, 56, 52, "rim")
        .circle(150, 78, 9)
        .outline(119, 64, 150, 64, 150, 69)
        .thin(142, 82, 99, 100);
    s.named(150, 78, 176, 66, "face");
    s.dimension(91, 192, 190, 192, "front_distance")
        .thin(91, 150, 91, 196)
        .thin(190, 152, 190, 196);
    s.dimension(91, 28, 280, 28, "rear_distance").thin(280, 22, 280, 108).thin(91, 22, 91, 50);
    s.arrow(230, 104, 230, 74).words(238, 90, Anchor.START, "+ raise");
  }

  private static void doubleRim(Sketch s) {
    halves(s);
    s.circle(91, 66, 9).thin(91, 75, 91, 90).circle(152, 92, 9).thin(152, 101, 152, 110);
    s.outline(119, 90, 119, 50, 91, 50, 91, 57).outline(84, 90, 84, 40, 152, 40, 152, 83);
    s.named(91, 66, 76, 56, "")
        .named(4, 34, Anchor.START, "rim_on_fixed")
        .named(152, 92, 176, 66, "rim_on_movable");
    s.dimension(91, 24, 152, 24, "span").thin(91, 18, 91, 50).thin(152, 18, 152, 40);
    s.dimension(91, 192, 190, 192, "front_distance")
        .thin(91, 150, 91, 196)
        .thin(190, 152, 190, 196);
    s.arrow(232, 104, 232, 80).words(240, 98, Anchor.START, "+ raise");
    s.dimension(91, 46, 280, 46, "")
        .named(240, 42, Anchor.MIDDLE, "rear_distance")
        .thin(280, 40, 280, 108);
  }

  private static void eccentric(Sketch s) {
    s.circle(150, 118, 70).cross(150, 118, 78).dot(162, 110).thin(150, 118, 162, 110);
    s.leader(162, 110, 238, 140, "axis of turning").circle(150, 24, 15).thin(150, 39, 150, 48);
    s.leader(156, 114, 246, 96, "eccentricity").words(174, 22, Anchor.START, "dial gauge");
    s.arrow(214, 60, 226, 80).words(236, 68, Anchor.START, "turns");
  }

  private static void face(Sketch s) {
    s.centre(20, 104, 300, 104).body(30, 94, 150, 94, 150, 114, 30, 114);
    s.body(150, 40, 164, 38, 176, 166, 162, 168).hidden(150, 40, 150, 168);
    s.circle(222, 46, 15).thin(207, 46, 166, 46);
    s.named(157, 60, 110, 50, "tilt").dimension(256, 166, 256, 40, "diameter");
    s.thin(166, 40, 262, 40).thin(176, 166, 262, 166).words(222, 24, Anchor.MIDDLE, "dial gauge");
  }

  private static void bores(Sketch s) {
    s.centre(14, 130, 306, 130).words(300, 146, Anchor.END, "datum");
    double[] offsets = {-8, -30, -18, -44};
    for (int i = 0; i < offsets.length; i++) {
      double x = 50 + 70 * i;
      s.outline(x - 12, 130 + offsets[i] - 22, x + 12, 130 + offsets[i] - 22);
      s.outline(x - 12, 130 + offsets[i] + 22, x + 12, 130 + offsets[i] + 22)
          .dot(x, 130 + offsets[i]);
    }
    s.hidden(30, 128, 290, 88).leader(262, 92, 262, 48, "fitted line");
    s.dimension(50, 182, 190, 182, "positions").thin(50, 152, 50, 188).thin(190, 152, 190, 188);
    s.move(22, 92, 22, 52, "offsets");
  }

  private static void surface(Sketch s) {
    s.outline(30, 110, 80, 96, 140, 104, 200, 76, 260, 88, 290, 70);
    s.hidden(30, 104, 290, 58).hidden(30, 122, 290, 76);
    s.outline(30, 150, 290, 150).hatch(30, 150, 290, 160);
    s.dimension(200, 150, 200, 76, "heights").named(140, 150, 140, 180, "places");
    s.words(60, 40, Anchor.START, "between two parallel lines");
  }

  private static void offsetDowel(Sketch s) {
    s.body(40, 110, 90, 110, 90, 180, 40, 180).body(52, 40, 102, 40, 102, 110, 52, 110);
    s.centre(65, 104, 65, 192).centre(77, 28, 77, 116);
    s.thin(65, 110, 65, 98).leader(71, 102, 118, 96, "offset");
    s.circle(220, 110, 50).cross(220, 110, 58).hiddenCircle(244, 92, 50).dot(220, 110).dot(244, 92);
    s.arrow(220, 110, 244, 92)
        .named(284, 128, Anchor.START, "shift_x")
        .named(228, 40, Anchor.START, "shift_y");
    s.thin(232, 110, 282, 124)
        .thin(244, 92, 244, 110)
        .words(166, 176, Anchor.START, "dashed: hole in the cover");
  }

  private static void oversizeDowel(Sketch s) {
    s.circle(140, 106, 52).circle(168, 106, 52).hiddenCircle(154, 106, 74);
    s.centre(56, 106, 250, 106).centre(140, 94, 140, 118).centre(168, 94, 168, 118);
    s.dimension(140, 190, 168, 190, "shift").thin(140, 118, 140, 194).thin(168, 118, 168, 194);
    s.named(120, 58, 66, 40, "hole").named(200, 66, 244, 40, "other_hole");
    s.leader(228, 106, 250, 140, "reamed out");
  }

  private static void cover(Sketch s) {
    s.body(30, 60, 290, 60, 290, 150, 30, 150).circle(70, 104, 12).circle(250, 104, 12);
    s.hiddenCircle(76, 98, 12).hiddenCircle(247, 110, 12).centre(40, 104, 280, 104);
    s.dimension(70, 176, 250, 176, "distance").thin(70, 104, 70, 182).thin(250, 104, 250, 182);
    s.arrow(96, 84, 124, 84).named(128, 88, Anchor.START, "x1");
    s.arrow(96, 84, 96, 40).named(90, 46, Anchor.END, "y1").named(262, 84, Anchor.START, "x2");
    s.named(262, 98, Anchor.START, "y2");
  }

  private static void play(Sketch s) {
    s.body(30, 60, 290, 60, 290, 140, 30, 140).circle(70, 100, 16).circle(250, 100, 16);
    s.circle(70, 103, 12).circle(250, 97, 12).centre(40, 104, 280, 95).centre(40, 100, 280, 100);
    s.dimension(70, 172, 250, 172, "distance").thin(70, 112, 70, 178).thin(250, 112, 250, 178);
    s.named(250, 86, 256, 36, "clearance");
  }
}

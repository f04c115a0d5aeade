package endfloat.picture.drawing;

import endfloat.picture.SvgWriter.Anchor;

/** What is measured and set at the bench. */
final class BenchDrawings {
  private BenchDrawings() {}

  static void addTo(Drawings.Register to) {
    to.put(
        "A bore with planes at the top, the middle and the bottom, and two directions in each:"
            + " along and across. Ovality is the difference in one plane, taper that along one"
            + " direction.",
        s -> round(s, true),
        "bore_wear");
    to.put(
        "A journal with planes at both ends and the middle, and two directions in each. Ovality is"
            + " the difference in one plane, taper that along one direction.",
        s -> round(s, false),
        "journal_wear");
    to.put(
        "A shaft with a collar between two thrust faces of its housing: housing links hold the"
            + " faces apart, shaft links fill the room; what is left is the end float.",
        BenchDrawings::endFloat,
        "end_float");
    to.put(
        "A pack of shims: the thicknesses from stock add up to the target as nearly as they can.",
        BenchDrawings::shims,
        "shim_pack");
    to.put(
        "A vernier coupling: two rings of unequal numbers of teeth; moving one ring a tooth forward"
            + " and the other a tooth back turns the shaft by the least step.",
        BenchDrawings::vernier,
        "vernier_coupling");
    to.put(
        "A bore gauge held askew, or off the diameter by an offset: it reads a chord, or long.",
        BenchDrawings::boreGauge,
        "bore_gauge_error");
    to.put(
        "A length measured along a line that is inclined to it: the reading is too long.",
        BenchDrawings::cosine,
        "cosine_error");
    to.put(
        "A round section with lobes between two jaws: the span across may be constant though the"
            + " section is not round.",
        BenchDrawings::lobes,
        "lobing_span");
    to.put(
        "Radii of a section at angles round it, with the circle of least squares.",
        BenchDrawings::radii,
        "roundness");
    to.put(
        "A lobed section that turns in a vee block under a dial gauge; angle is that of the vee.",
        BenchDrawings::vee,
        "v_block_roundness");
    to.put(
        "Two cylinders side by side pressed together along a line.",
        s -> hertz(s, true),
        "hertz_line");
    to.put(
        "Two balls pressed together at a point; a hollow has a negative radius.",
        s -> hertz(s, false),
        "hertz_point",
        "hertz_elliptic");
  }

  private static void round(Sketch s, boolean bore) {
    if (bore) {
      s.section(40, 24, 60, 176).section(140, 24, 160, 176).outline(40, 24, 160, 24);
    } else {
      s.body(60, 30, 140, 30, 140, 170, 60, 170).body(44, 14, 156, 14, 156, 30, 44, 30);
      s.body(44, 170, 156, 170, 156, 186, 44, 186);
    }
    s.centre(100, 8, 100, 192);
    String[] planes = {"top", "middle", "bottom"};
    for (int i = 0; i < 3; i++) {
      double y = 52 + 48 * i;
      s.thin(60, y, 140, y)
          .leader(140, y, 176, y, "plane " + (bore ? planes[i] : String.valueOf(i + 1)));
    }
    s.circle(296, 110, 32).dimensionOf(264, 110, 328, 110, "").dimensionOf(296, 142, 296, 78, "");
    s.words(296, 164, Anchor.MIDDLE, "2 directions").named(296, 64, Anchor.MIDDLE, "diameters");
  }

  private static void endFloat(Sketch s) {
    s.section(90, 20, 110, 88)
        .section(90, 120, 110, 188)
        .section(220, 20, 240, 88)
        .section(220, 120, 240, 188);
    s.hatch(110, 10, 220, 20).outline(90, 20, 240, 20);
    s.body(20, 92, 300, 92, 300, 116, 20, 116).body(124, 60, 206, 60, 206, 148, 124, 148);
    s.centre(8, 104, 312, 104);
    s.dimensionOf(110, 44, 220, 44, "housing links").dimensionOf(124, 166, 206, 166, "shaft links");
    s.named(110, 72, 60, 60, "face_one").named(220, 72, 256, 60, "face_two");
    s.leader(213, 136, 256, 150, "end float");
  }

  private static void shims(Sketch s) {
    s.section(60, 24, 190, 60)
        .section(60, 130, 190, 170)
        .outline(60, 60, 190, 60)
        .outline(60, 130, 190, 130);
    s.body(80, 60, 170, 60, 170, 84, 80, 84).body(80, 84, 170, 84, 170, 104, 80, 104);
    s.body(80, 104, 170, 104, 170, 130, 80, 130);
    s.dimension(206, 130, 206, 60, "target").thin(190, 60, 212, 60).thin(190, 130, 212, 130);
    s.named(80, 94, 60, 100, "stock");
  }

  private static void vernier(Sketch s) {
    s.circle(160, 104, 84).cross(160, 104, 92);
    for (int i = 0; i < 20; i++) {
      double a = StrictMath.toRadians(18 * i);
      s.thin(
          160 + 78 * StrictMath.cos(a),
          104 + 78 * StrictMath.sin(a),
          160 + 90 * StrictMath.cos(a),
          104 + 90 * StrictMath.sin(a));
    }
    s.circle(160, 104, 52);
    for (int i = 0; i < 19; i++) {
      double a = 2 * Math.PI * i / 19;
      s.thin(
          160 + 46 * StrictMath.cos(a),
          104 + 46 * StrictMath.sin(a),
          160 + 58 * StrictMath.cos(a),
          104 + 58 * StrictMath.sin(a));
    }
    s.named(240, 70, 262, 44, "teeth_a").named(206, 130, 262, 160, "teeth_b");
    s.arrow(100, 20, 124, 12).words(94, 24, Anchor.END, "+ advance");
  }

  private static void boreGauge(Sketch s) {
    s.circle(90, 104, 66).cross(90, 104, 74).outline(28, 82, 152, 82);
    s.dimension(170, 104, 170, 82, "offset")
        .thin(150, 82, 176, 82)
        .dimension(24, 150, 156, 150, "diameter");
    s.section(216, 30, 228, 178).section(292, 30, 304, 178).centre(260, 20, 260, 190);
    s.outline(228, 116, 292, 92).thin(228, 104, 292, 104).named(282, 98, 262, 60, "tilt");
  }

  private static void cosine(Sketch s) {
    s.body(40, 120, 270, 120, 270, 150, 40, 150).dimension(40, 178, 270, 178, "length");
    s.outline(40, 116, 270, 76).thin(40, 116, 270, 116).angle(40, 116, 120, -10, 0, "angle");
    s.words(150, 66, Anchor.MIDDLE, "line of measuring").dimension(270, 116, 270, 76, "offset");
  }

  private static double[] lobed(double x, double y, double radius, double amplitude, int lobes) {
    double[] points = new double[2 * 73];
    for (int i = 0; i <= 72; i++) {
      double a = StrictMath.toRadians(5 * i);
      double r = radius + amplitude * StrictMath.sin(lobes * a);
      points[2 * i] = x + r * StrictMath.cos(a);
      points[2 * i + 1] = y + r * StrictMath.sin(a);
    }
    return points;
  }

  private static void lobes(Sketch s) {
    s.outline(lobed(160, 104, 58, 5, 3)).pitchCircle(160, 104, 58).cross(160, 104, 74);
    s.section(70, 60, 100, 150)
        .section(220, 60, 250, 150)
        .outline(100, 60, 100, 150)
        .outline(220, 60, 220, 150);
    s.dimensionOf(100, 176, 220, 176, "span")
        .named(160, 46, 200, 24, "amplitude")
        .named(120, 150, 90, 186, "lobes");
  }

  private static void radii(Sketch s) {
    s.outline(lobed(150, 104, 70, 6, 5)).hiddenCircle(153, 102, 70).cross(150, 104, 84);
    s.thin(150, 104, 200, 54)
        .named(182, 72, 250, 50, "radii")
        .angle(150, 104, 36, -45, 0, "angles");
    s.leader(160, 172, 196, 188, "fitted circle");
  }

  private static void vee(Sketch s) {
    s.outline(lobed(160, 92, 50, 4, 3)).cross(160, 92, 58);
    s.body(80, 100, 112, 100, 160, 164, 208, 100, 240, 100, 240, 186, 80, 186);
    s.angle(160, 164, 34, -127, -53, "angle").circle(160, 20, 12).thin(160, 32, 160, 40);
    s.named(172, 20, 200, 20, "reading").named(196, 66, 236, 60, "lobes");
  }

  private static void hertz(Sketch s, boolean line) {
    s.circle(160, 52, 40).circle(160, 138, 46).cross(160, 52, 44).cross(160, 138, 50);
    s.named(186, 22, 226, 20, "radius_1").named(194, 168, 232, 178, "radius_2");
    s.acts(90, 20, 90, 60, "force").leader(160, 92, 232, 92, line ? "band, length" : "a spot");
  }
}

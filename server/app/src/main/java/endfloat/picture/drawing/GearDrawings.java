package endfloat.picture.drawing;

import endfloat.picture.SvgWriter.Anchor;

/** Gears: pitch circles, pitch cones, flanks. */
final class GearDrawings {
  private GearDrawings() {}

  static void addTo(Drawings.Register to) {
    to.put(
        "A bevel pair in section: the wheel's axis upright, the pinion's level, both through the"
            + " common apex. A shift away from the apex is positive and opens the backlash, which"
            + " is an arc at the heel; pitch_angle is the cone of the member that moves.",
        GearDrawings::bevelShift,
        "backlash_from_axial_shift",
        "axial_shift_for_backlash");
    to.put(
        "A bevel pair with a shim behind each member: positive shifts lead away from the common"
            + " apex, along the member's own axis.",
        GearDrawings::bevelShims,
        "bevel_shims");
    to.put(
        "A bevel pair in section: shaft angle between the axes, face width along the cone from heel"
            + " to toe.",
        GearDrawings::bevelPair,
        "bevel_pair");
    to.put(
        "Two wheels on parallel shafts: the pitch circles touch on the line of centres; a change of"
            + " the centre distance is positive when the centres part.",
        GearDrawings::centres,
        "backlash_from_centre_distance",
        "backlash_at_centre_distance");
    to.put(
        "Two wheels on parallel shafts, gear 1 driving gear 2.",
        GearDrawings::pair,
        "spur_pair",
        "helical_pair");
    to.put(
        "A pinion in a ring with internal teeth: the pitch circles touch on the line of centres,"
            + " both centres on the same side; parting the centres closes the backlash.",
        GearDrawings::ring,
        "internal_pair");
    to.put(
        "A dial gauge on a tooth, its stylus tangential at a radius, the mate held fast: the"
            + " reading is referred to the pitch radius; a stylus out of the tangent by an angle"
            + " reads short.",
        GearDrawings::dial,
        "backlash_from_dial");
    to.put(
        "Two teeth in a gap: circumferential backlash along the pitch line, normal backlash square"
            + " to the flanks, which are inclined by the pressure angle.",
        GearDrawings::flanks,
        "backlash_normal",
        "backlash_circular");
    to.put(
        "Two teeth in a gap: circumferential backlash along the pitch line, radial backlash along"
            + " the line of centres.",
        GearDrawings::radial,
        "backlash_radial");
    to.put(
        "A wheel with its mate held: the circumferential backlash on the pitch circle is the"
            + " free angle of the wheel.",
        GearDrawings::freeAngle,
        "backlash_angular");
    to.put(
        "Teeth of two gears with normal backlash between the flanks that do not drive.",
        GearDrawings::allowed,
        "recommended_backlash",
        "recommended_backlash_bevel",
        "recommended_backlash_coarse");
    to.put(
        "A bevel wheel in its housing: housing links lead from the apex to the face that locates"
            + " the shaft, shaft links from there back to the apex of the wheel's pitch cone. What the"
            + " housing grows more than the shaft moves the wheel away from the apex.",
        GearDrawings::hot,
        "backlash_hot");
    to.put(
        "Backlash of a mesh against the shim behind one member: two or more settings give a line,"
            + " and the line gives the shim for the target.",
        GearDrawings::rate,
        "backlash_rate_measured");
    to.put(
        "A train of two meshes: each mesh with its circumferential backlash and the radii of driver"
            + " and driven gear.",
        GearDrawings::train,
        "backlash_through_train");
    to.put(
        "A skew pair seen along the common perpendicular: the helix angles, of one hand when of one"
            + " sign, add to the shaft angle; teeth slide along one another.",
        GearDrawings::skew,
        "skew_pair",
        "skew_wear_share");
    to.put(
        "A spur tooth loaded at its tip by the tangential force; bending is greatest at the root.",
        GearDrawings::bending,
        "tooth_bending_stress");
    to.put(
        "Two teeth in contact at the pitch point, as two cylinders, face_width long, pressed together"
            + " along their common normal; the tangential force stands at the pressure angle to it.",
        GearDrawings::contact,
        "tooth_contact_stress",
        "tooth_stress_agma");
    to.put(
        "A spur tooth under the force of the torque at the tip or at the highest point of single"
            + " contact, with the fillet at its root.",
        GearDrawings::rating,
        "tooth_stress_iso");
  }

  /** Wheel above, axis upright at x; pinion at the left, axis level at y; apex where they meet. */
  private static Sketch cones(Sketch s) {
    double ax = 110;
    double ay = 152;
    s.centre(ax, 20, ax, 190).centre(20, ay, 300, ay);
    // The pinion: pitch cone from the apex to the right, its back cone and face.
    s.body(
        240, 152 - 72, 252, 152 - 66, 252, 152 + 30, 240, 152 + 36, 190, 152 + 22, 190, 152 - 44);
    // The wheel above: its cone opens upwards and to the right.
    s.body(110 - 54, 66, 110 + 120, 66, 110 + 126, 78, 110 + 74, 104, 110 - 36, 104, 110 - 60, 78);
    s.centre(ax, ay, 262, 51);
    s.dot(ax, ay);
    return s.words(ax - 6, ay + 16, Anchor.END, "apex");
  }

  private static void bevelShift(Sketch s) {
    cones(s)
        .angle(110, 152, 34, -90, -34, "pitch_angle")
        .move(110, 58, 110, 22, "shift")
        .leader(236, 76, 262, 30, "heel");
  }

  private static void bevelShims(Sketch s) {
    cones(s).section(252, 120, 260, 182);
    s.section(76, 58, 106, 66);
    s.move(110, 50, 110, 18, "shift_wheel")
        .arrow(264, 152, 300, 152)
        .named(316, 198, Anchor.END, "+ shift_pinion");
    s.leader(92, 62, 60, 40, "shim").leader(256, 130, 274, 104, "shim");
  }

  private static void bevelPair(Sketch s) {
    cones(s)
        .angle(110, 152, 30, -90, 0, "shaft_angle")
        .dimension(200, 124, 248, 93, "face_width")
        .leader(236, 76, 262, 30, "heel")
        .words(150, 60, Anchor.MIDDLE, "gear 2, wheel")
        .words(318, 198, Anchor.END, "gear 1, pinion");
  }

  private static Sketch wheels(Sketch s) {
    s.circle(95, 104, 50).pitchCircle(95, 104, 44).cross(95, 104, 60);
    s.circle(223, 104, 90).pitchCircle(223, 104, 84);
    return s.cross(223, 104, 94);
  }

  private static void centres(Sketch s) {
    wheels(s)
        .words(95, 40, Anchor.MIDDLE, "gear 1")
        .dimensionOf(95, 130, 223, 130, "centre distance")
        .move(250, 180, 292, 180, "change");
  }

  private static void pair(Sketch s) {
    wheels(s)
        .named(95, 70, Anchor.MIDDLE, "teeth_1")
        .named(223, 66, Anchor.MIDDLE, "teeth_2")
        .dimension(95, 136, 223, 136, "centre_distance");
  }

  private static void ring(Sketch s) {
    s.circle(150, 104, 92).pitchCircle(150, 104, 84).circle(150, 104, 76);
    s.circle(194, 104, 48).pitchCircle(194, 104, 40).circle(194, 104, 32);
    s.cross(150, 104, 8).cross(194, 104, 8);
    s.dimension(150, 168, 194, 168, "centre_distance");
    s.named(194, 84, Anchor.MIDDLE, "teeth_1").named(108, 64, Anchor.MIDDLE, "teeth_2");
  }

  private static void dial(Sketch s) {
    s.arc(160, 250, 178, -140, -40).cross(160, 190, 12);
    s.centre(36, 137, 70, 108, 110, 90, 160, 82, 210, 90, 250, 108, 284, 137);
    // One tooth, and the gauge whose stylus touches its flank.
    s.body(148, 80, 152, 44, 168, 44, 172, 80);
    s.centre(160, 30, 160, 198);
    s.outline(172, 56, 272, 56).circle(290, 56, 18).thin(290, 56, 300, 46);
    s.thin(176, 56, 260, 22)
        .angle(176, 56, 60, -22, 0, "")
        .named(196, 24, Anchor.START, "stylus_angle");
    s.dimension(130, 190, 130, 56, "radius").thin(126, 56, 150, 56);
    s.dimension(40, 190, 40, 132, "pitch_radius").thin(36, 190, 160, 190);
    s.acts(60, 40, 96, 40, "reading").words(290, 92, Anchor.MIDDLE, "dial gauge");
  }

  private static Sketch gap(Sketch s) {
    // A gap of the wheel below, a tooth of the mate above it: left flanks touch, right ones do not.
    s.outline(14, 60, 62, 60, 92, 150, 228, 150, 258, 60, 306, 60);
    s.body(62 + 4, 20, 66, 56, 92, 134, 196, 134, 224, 56, 224, 20);
    return s.centre(14, 104, 306, 104);
  }

  private static void flanks(Sketch s) {
    gap(s)
        .thin(206, 104, 206, 168)
        .thin(243, 104, 243, 168)
        .named(224, 164, 250, 176, "circular")
        .thin(207, 103, 240, 114)
        .named(222, 108, 268, 128, "normal")
        .thin(243, 104, 243, 30)
        .angle(243, 104, 64, -90, -71, "")
        .named(316, 30, Anchor.END, "pressure_angle");
  }

  private static void allowed(Sketch s) {
    gap(s)
        .thin(207, 103, 240, 114)
        .leader(222, 108, 262, 140, "normal")
        .words(14, 180, Anchor.START, "drive flanks together");
  }

  private static void radial(Sketch s) {
    gap(s)
        .dimensionOf(150, 134, 150, 150, "radial")
        .thin(206, 104, 206, 168)
        .thin(243, 104, 243, 168)
        .named(224, 164, 250, 180, "circular");
  }

  private static void freeAngle(Sketch s) {
    s.circle(160, 112, 82).pitchCircle(160, 112, 72).cross(160, 112, 90);
    s.thin(160, 112, 160, 40).thin(160, 112, 196, 50);
    s.named(178, 43, 226, 22, "circular");
    s.dimension(88, 112, 232, 112, "pitch_diameter");
  }

  private static void hot(Sketch s) {
    s.hatch(20, 20, 250, 34).outline(20, 34, 250, 34).hatch(236, 34, 250, 120);
    s.outline(236, 34, 236, 120);
    s.outline(104, 92, 224, 92)
        .outline(104, 112, 224, 112)
        .body(224, 80, 236, 80, 236, 124, 224, 124);
    s.body(62, 82, 94, 62, 104, 78, 104, 126, 94, 142, 62, 122).centre(10, 102, 280, 102);
    s.centre(30, 102, 108, 53).dot(30, 102).words(26, 94, Anchor.END, "apex");
    s.dimensionOf(30, 52, 236, 52, "housing links");
    s.dimensionOf(30, 160, 236, 160, "shaft links").thin(236, 124, 236, 166).thin(30, 102, 30, 166);
    s.leader(236, 70, 258, 70, "thrust face");
    s.arrow(60, 186, 96, 186).words(104, 190, Anchor.START, "+ away from the apex: opens");
  }

  private static void rate(Sketch s) {
    s.outline(50, 20, 50, 164, 300, 164).thin(60, 150, 280, 40);
    s.dot(100, 130).dot(180, 90).dot(250, 55);
    s.named(300, 182, Anchor.END, "shim").named(56, 26, Anchor.START, "backlash");
    s.hidden(50, 74, 212, 74, 212, 164).named(130, 70, Anchor.MIDDLE, "target");
    s.words(206, 182, Anchor.END, "next shim").leader(150, 105, 170, 130, "slope");
  }

  private static void train(Sketch s) {
    s.circle(60, 104, 38).cross(60, 104, 44).circle(154, 104, 56).cross(154, 104, 62);
    s.circle(154, 104, 26).circle(246, 104, 66).cross(246, 104, 70);
    s.dimension(60, 130, 98, 130, "driver_radius").dimension(98, 80, 154, 80, "driven_radius");
    s.named(98, 104, 110, 186, "backlash").leader(180, 104, 196, 186, "next mesh");
  }

  private static void skew(Sketch s) {
    s.body(40, 70, 280, 70, 280, 130, 40, 130).centre(20, 100, 300, 100);
    s.body(118, 20, 178, 10, 206, 180, 146, 190);
    s.centre(146, 6, 178, 196);
    for (double x = 60; x < 280; x += 26) {
      if (x < 110 || (x > 210 && x < 258)) {
        s.thin(x, 128, x + 22, 72);
      }
    }
    s.named(246, 100, 250, 40, "helix_angle_1");
    s.words(60, 60, Anchor.MIDDLE, "gear 1").words(214, 176, Anchor.START, "gear 2");
    s.leader(162, 100, 226, 152, "teeth slide here");
  }

  private static void bending(Sketch s) {
    s.outline(20, 150, 96, 150, 122, 130, 142, 50, 178, 50, 198, 130, 224, 150, 300, 150);
    s.hatch(96, 152, 224, 172).centre(160, 30, 160, 190);
    s.acts(62, 54, 138, 54, "tangential").hidden(116, 138, 204, 138);
    s.leader(204, 138, 236, 116, "root");
    s.dimensionOf(160, 50, 160, 138, "height");
  }

  private static void contact(Sketch s) {
    s.arc(160, 10, 84, 20, 160).arc(160, 220, 126, -150, -30);
    s.centre(160, 6, 160, 196).centre(60, 94, 260, 94);
    s.arrow(160, 40, 160, 84).words(168, 62, Anchor.START, "normal force");
    s.arrow(136, 46, 150, 84).named(130, 50, Anchor.END, "tangential");
    s.named(246, 60, Anchor.START, "face_width").words(246, 76, Anchor.START, "into the page");
    s.words(70, 30, Anchor.END, "gear 1").words(60, 170, Anchor.END, "gear 2");
  }

  private static void rating(Sketch s) {
    s.outline(
        20, 150, 96, 150, 112, 142, 122, 126, 142, 50, 178, 50, 198, 126, 208, 142, 224, 150, 300,
        150);
    s.hatch(96, 152, 224, 172).centre(160, 30, 160, 190).centre(60, 96, 270, 96);
    s.arrow(72, 66, 138, 58).words(70, 54, Anchor.MIDDLE, "tooth force");
    s.dimension(236, 96, 236, 50, "addendum").dimension(236, 150, 236, 96, "dedendum");
    s.thin(178, 50, 242, 50).named(202, 136, 252, 184, "root_radius");
  }
}

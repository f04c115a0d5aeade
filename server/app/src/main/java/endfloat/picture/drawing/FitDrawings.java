package endfloat.picture.drawing;

import endfloat.picture.SvgWriter.Anchor;

/** Fits, chains of dimensions, growth, joints made with force or heat. */
final class FitDrawings {
  private FitDrawings() {}

  static void addTo(Drawings.Register to) {
    to.put(
        "Tolerance zones of hole and shaft at the zero line, which is the basic size: deviations"
            + " upwards are positive.",
        FitDrawings::zones,
        "iso_limits",
        "iso_limits_text",
        "iso_fit",
        "iso_fit_text",
        "inch_fit");
    to.put(
        "A scale with the new limits and, beyond them, the permissible worn limit; the measured"
            + " value stands between.",
        FitDrawings::worn,
        "fit_verdict");
    to.put(
        "A chain of dimensions round a gap: links that open the gap have a positive sense, links"
            + " that close it a negative one.",
        FitDrawings::chain,
        "chain_worst_case",
        "chain_rss",
        "chain_monte_carlo",
        "chain_allocate",
        "chain_nominal",
        "chain_reject");
    to.put(
        "A hub on a shaft in section, drawn free: the shaft is larger than the bore by the"
            + " diametral interference.",
        FitDrawings::press,
        "press_fit");
    to.put(
        "A hub and a shaft, free: the clearance or interference is diametral, at 20 °C or hot.",
        FitDrawings::free,
        "heat_to_fit",
        "cool_to_fit",
        "fitting_clearance");
    to.put(
        "A shaft in a bore, each at its own temperature: sizes are those at 20 °C, the clearance is"
            + " diametral.",
        FitDrawings::hot,
        "hot_clearance",
        "loose_temperature");
    to.put(
        "A bar that grows from its length by heat.",
        FitDrawings::growth,
        "thermal_growth",
        "thermal_growth_by_intervals",
        "at_reference_temperature");
    to.put(
        "An outer and an inner part of one length, fixed together at one end: what the outer grows"
            + " more than the inner is positive.",
        FitDrawings::differential,
        "differential_growth");
  }

  private static void zones(Sketch s) {
    s.outline(40, 110, 300, 110).words(36, 114, Anchor.END, "0");
    s.section(90, 70, 140, 110).section(190, 126, 240, 158);
    s.words(115, 60, Anchor.MIDDLE, "hole").words(215, 178, Anchor.MIDDLE, "shaft");
    s.arrow(60, 104, 60, 62).words(54, 58, Anchor.MIDDLE, "+");
    s.dimensionOf(158, 126, 158, 110, "").leader(158, 118, 176, 96, "least clearance");
    s.leader(262, 110, 262, 72, "basic size");
  }

  private static void worn(Sketch s) {
    s.outline(20, 110, 300, 110)
        .thin(70, 90, 70, 126)
        .thin(150, 90, 150, 126)
        .outline(236, 80, 236, 136);
    s.hatch(236, 98, 300, 122);
    s.named(70, 90, Anchor.MIDDLE, "new_least").named(158, 76, Anchor.MIDDLE, "new_greatest");
    s.named(236, 66, Anchor.MIDDLE, "worn").dot(190, 110).thin(172, 110, 208, 110);
    s.named(190, 110, 196, 160, "measured");
  }

  private static void chain(Sketch s) {
    s.section(20, 40, 40, 150)
        .section(280, 40, 300, 150)
        .hatch(20, 150, 300, 164)
        .outline(40, 150, 280, 150);
    s.body(40, 110, 130, 110, 130, 150, 40, 150).body(130, 120, 230, 120, 230, 150, 130, 150);
    s.dimensionOf(40, 60, 280, 60, "opens: sense +1").dimensionOf(40, 98, 130, 98, "closes: −1");
    s.dimensionOf(130, 98, 230, 98, "closes: −1").dimensionOf(230, 136, 280, 136, "gap");
    s.named(90, 130, 70, 184, "links");
  }

  private static Sketch hub(Sketch s) {
    s.section(120, 30, 220, 70)
        .section(120, 138, 220, 178)
        .outline(120, 30, 120, 178)
        .outline(220, 30, 220, 178);
    s.centre(10, 104, 310, 104);
    return s;
  }

  private static void press(Sketch s) {
    hub(s)
        .body(40, 66, 110, 66, 110, 142, 40, 142)
        .hidden(40, 92, 110, 92)
        .hidden(40, 116, 110, 116);
    s.dimension(60, 142, 60, 66, "diameter").dimension(236, 178, 236, 30, "hub_outside");
    s.thin(220, 30, 242, 30).thin(220, 178, 242, 178).dimension(120, 194, 220, 194, "length");
    s.named(100, 104, 104, 20, "shaft_bore").thin(110, 66, 220, 66);
    s.named(160, 68, 176, 90, "interference");
  }

  private static void free(Sketch s) {
    hub(s).body(40, 62, 110, 62, 110, 146, 40, 146).dimension(66, 146, 66, 62, "diameter");
    s.thin(110, 62, 240, 62).thin(220, 70, 240, 70).named(232, 66, 250, 44, "interference");
    s.words(170, 108, Anchor.MIDDLE, "hub").words(40, 176, Anchor.START, "shaft");
  }

  private static void hot(Sketch s) {
    hub(s).body(20, 78, 300, 78, 300, 130, 20, 130);
    s.dimension(170, 138, 170, 70, "bore").dimension(50, 130, 50, 78, "shaft");
    s.named(232, 50, Anchor.START, "t_bore").named(292, 98, Anchor.END, "t_shaft");
  }

  private static void growth(Sketch s) {
    s.hatch(20, 60, 34, 140).outline(34, 60, 34, 140).body(34, 84, 240, 84, 240, 116, 34, 116);
    s.hidden(240, 84, 280, 84, 280, 116, 240, 116);
    s.dimension(34, 160, 240, 160, "length").thin(240, 116, 240, 166);
    s.arrow(240, 64, 280, 64).words(284, 58, Anchor.END, "+ grows");
  }

  private static void differential(Sketch s) {
    s.section(20, 40, 34, 160).section(34, 40, 250, 60).section(34, 140, 250, 160);
    s.body(34, 88, 236, 88, 236, 112, 34, 112).centre(10, 100, 310, 100);
    s.thin(250, 60, 250, 196).thin(236, 112, 236, 196).words(256, 192, Anchor.START, "difference");
    s.dimension(34, 180, 236, 180, "length");
    s.leader(140, 50, 200, 24, "outer").leader(140, 100, 172, 128, "inner");
  }
}

package endfloat.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.InvestigationRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pictures of calculations carry the numbers of the calculation and nothing else. */
class CalculationChartTest {
  private static final String LINES =
      """
      load [N] = 1000 N
      shaft = stepped_shaft([segment(length: 250 mm, outer: 30 mm), segment(length: 250 mm, outer: 30 mm)],
        [bearing(at: 0 mm), bearing(at: 500 mm)], [shaft_load(at: 250 mm, force: load)], modulus: 206 GPa)
      fit = iso_fit(25 mm, "H7/g6")
      drawn = iso_fit("25 H7/g6")
      gap = chain_worst_case([link(nominal: 20 mm, tolerance: 0.1 mm), link(nominal: 19.5 mm, tolerance: 0.05 mm, sense: -1)])
      pair = spur_pair(20, 40, 4 mm, torque: 100 N.m)
      cones = bevel_pair(20, 40, 4 mm, face_width: 25 mm, torque: 100 N.m)
      bores = bore_line([0 mm, 100 mm, 200 mm, 300 mm, 400 mm], [0 um, 0 um, 40 um, 0 um, 0 um])
      bar = beam(500 mm, "supported", "supported", 206 GPa, diameter: 30 mm, force: load, force_at: 250 mm)
      cover = circular_plate(100 mm, 5 mm, 200 GPa, pressure: 0.1 MPa)
      point = circular_plate(100 mm, 5 mm, 200 GPa, force: 1000 N)
      wall = annular_plate(110 mm, 30 mm, 5 mm, 70 GPa, 0.33, "fixed", "guided", 1000 N)
      twice = 2 * load
      """;

  private static ChartPicture picture(String of) {
    InvestigationRecord record =
        ChartPictureTest.record(LINES, "{\"chart\": \"calculation\", \"of\": \"" + of + "\"}");
    ValueGraph graph = RecordGraph.of(record).graph();
    ChartPicture picture = ChartPicture.of(record.cell("c1").orElseThrow(), graph).orElseThrow();
    keep(of, picture);
    return picture;
  }

  /** For looking at. */
  private static void keep(String name, ChartPicture picture) {
    try {
      Path folder = Files.createDirectories(Path.of("target", "pictures"));
      Files.writeString(folder.resolve("calculation-" + name + ".svg"), picture.svg());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Simply supported, load at mid-span: y = P L^3/(48 E I) = 0.31794 mm, M = P L/4 = 125 N.m.
   * Roark's Formulas for Stress and Strain, 7th ed., Table 8.1, case 1e.
   */
  @Test
  void aShaftShowsItsDeflectionLineAndItsBendingMoment() {
    ChartPicture picture = picture("shaft");
    assertTrue(picture.description().contains("0.31794 mm at 250 mm"), picture.description());
    assertTrue(picture.description().contains("125 N·m at 250 mm"), picture.description());
    assertEquals(List.of("0 mm", "0 mm", "0 N·m"), picture.rows().get(0));
    assertEquals(List.of("250 mm", "0.31794 mm", "125 N·m"), picture.rows().get(5));
    assertTrue(picture.restsOn().contains("load"));
  }

  /** The same beam and the same formulas as the shaft above. */
  @Test
  void aBeamShowsItsDeflectionLineAndItsBendingMoment() {
    ChartPicture picture = picture("bar");
    assertTrue(picture.problem().isEmpty(), () -> picture.problem().toString());
    assertTrue(picture.description().contains("0.31794 mm at 250 mm"), picture.description());
    assertEquals(List.of("250 mm", "0.31794 mm", "125 N\u00b7m"), picture.rows().get(5));
  }

  /**
   * Clamped plate under pressure: y = q a^4/(64 D), moment at the edge -q a^2/8; D = E t^3/(12 (1 -
   * v^2)). Roark's Formulas for Stress and Strain, 7th ed., Table 11.2, case 10b: 0.068250 mm, -125
   * N.mm/mm.
   */
  @Test
  void aPlateShowsItsDeflectionFromTheCentreOutwards() {
    ChartPicture picture = picture("cover");
    assertTrue(picture.problem().isEmpty(), () -> picture.problem().toString());
    assertTrue(picture.description().contains("0.06825 mm at 0 mm"), picture.description());
    assertEquals("100 mm", picture.rows().get(10).get(0));
    assertTrue(picture.rows().get(10).get(2).startsWith("\u2212125 N"), picture.rows().toString());
    assertEquals("\u2013", picture("point").rows().get(0).get(2), "no end beneath a point");
    assertTrue(picture("point").svg().contains("<svg"));
    assertEquals("30 mm", picture("wall").rows().get(0).get(0));
  }

  /** ISO 286-2: 25 H7 is 0 to +21 um, 25 g6 is -20 to -7 um. */
  @Test
  void aFitShowsItsZonesHoweverItIsWritten() {
    for (String name : List.of("fit", "drawn")) {
      ChartPicture picture = picture(name);
      assertEquals(List.of("hole H7", "0 µm", "21 µm"), picture.rows().get(0));
      assertEquals(List.of("shaft g6", "−20 µm", "−7 µm"), picture.rows().get(1));
      assertTrue(picture.description().contains("clearance 7 µm to 41 µm"), picture.description());
    }
  }

  /** 20 ± 0.1 less 19.5 ± 0.05 by hand: 0.35 to 0.65. */
  @Test
  void aChainShowsItsLinksAndTheGap() {
    ChartPicture picture = picture("gap");
    assertEquals(List.of("link 2", "−19.5 mm", "0.05 mm"), picture.rows().get(1));
    assertEquals("0.35 mm to 0.65 mm", picture.rows().get(2).get(1));
  }

  /** F_t = 2 T/d = 2500 N on 80 mm, F_r = F_t tan 20 deg = 909.93 N (Shigley, section 13-14). */
  @Test
  void aPairShowsTheForcesOnItsTeeth() {
    ChartPicture picture = picture("pair");
    assertEquals(List.of("tangential", "2500 N"), picture.rows().get(0));
    assertEquals(List.of("radial", "909.93 N"), picture.rows().get(1));
    assertEquals(5, picture("cones").rows().size());
  }

  /** One bore of five out by 40 um shows 32 um: least squares by hand, mean 8 um, slope 0. */
  @Test
  void boresShowWhatTheFitHides() {
    ChartPicture picture = picture("bores");
    assertEquals(List.of("200 mm", "40 µm", "32 µm", "40 µm"), picture.rows().get(2));
  }

  @Test
  void whatIsNoCallOrHasNoPictureIsRefusedWithTheWayOut() {
    assertTrue(picture("twice").problem().isPresent());
    assertTrue(picture("nothing").problem().isPresent());
    assertFalse(picture("twice").problem().orElseThrow().problem().wayOut().isEmpty());
  }
}

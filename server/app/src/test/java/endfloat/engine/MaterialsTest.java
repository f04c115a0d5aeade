package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Catalogue;
import endfloat.record.EnteredMaterial;
import endfloat.record.InvestigationRecord;
import endfloat.working.Completion;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A material of the record comes before one of the library. */
class MaterialsTest {
  private static final EnteredMaterial CRANKCASE =
      new EnteredMaterial(
          "LM25 of this casting",
          "21.4e-6 1/K \u00b1 0.2e-6 1/K",
          "71 GPa",
          "0.33",
          "",
          "lots",
          "test bar 3, dilatometer");

  private static ValueGraph graph(List<EnteredMaterial> materials, String lines) {
    ValueGraph graph = new ValueGraph(Catalogue.library());
    graph.update(source(materials, lines));
    return graph;
  }

  private static GraphSource source(List<EnteredMaterial> materials, String lines) {
    return new GraphSource(
        List.of(new Clause.Working("w1", "1", lines)),
        List.of(),
        materials,
        GraphSettings.STANDARD,
        "");
  }

  @Test
  void itsValuesAreThoseEnteredWithHalfTheTypedUncertainty() {
    ValueGraph graph =
        graph(
            List.of(CRANKCASE),
            """
            a [1/K] = material("LM25 of this casting").expansion
            e [GPa] = material("lm25-of this CASTING").modulus
            n = material("LM25 of this casting").poisson
            """);
    assertEquals(21.4e-6, graph.figure("a").orElseThrow().si(), 1e-20);
    assertEquals(0.1e-6, graph.figure("a").orElseThrow().standardUncertainty(), 1e-20);
    assertEquals(71e9, graph.figure("e").orElseThrow().si(), 1);
    assertEquals(0.33, graph.figure("n").orElseThrow().si());
  }

  /** The same material has the same error wherever it is named. */
  @Test
  void onePropertyIsOneRoot() {
    ValueGraph graph =
        graph(
            List.of(CRANKCASE),
            "a = material(\"LM25 of this casting\").expansion\n"
                + "b = a - material(\"LM25 of this casting\").expansion");
    assertEquals(0, graph.figure("b").orElseThrow().standardUncertainty());
  }

  @Test
  void aPropertyNotEnteredIsTheLibrarysWhereThatHasTheMaterial() {
    EnteredMaterial measured =
        new EnteredMaterial("steel 4140", "11.9e-6 1/K", "", "", "", "", "certificate 88");
    String lines =
        "a [1/K] = material(\"4140\").expansion\nb = material(\"steel 4140\").expansion\n"
            + "e [GPa] = material(\"steel 4140\").modulus\ns = material(\"steel 4140\").sources";
    ValueGraph graph = graph(List.of(measured), lines);
    ValueGraph library = graph(List.of(), lines);
    assertEquals(11.9e-6, graph.figure("b").orElseThrow().si());
    assertEquals(library.figure("e").orElseThrow().si(), graph.figure("e").orElseThrow().si());
    String sources = graph.figure("s").orElseThrow().value().orElseThrow().toString();
    assertTrue(
        sources.contains("expansion as entered in this record (certificate 88); the rest: "),
        sources);
    // another name that the library has for it is the same steel
    assertEquals(11.9e-6, graph.figure("a").orElseThrow().si());
  }

  @Test
  void onlyWhoReadsAPropertyThatIsNotThereIsRefused() {
    ValueGraph graph =
        graph(
            List.of(CRANKCASE),
            "d = material(\"LM25 of this casting\").density\n"
                + "y = material(\"LM25 of this casting\").yield\n"
                + "a = material(\"LM25 of this casting\").expansion");
    assertTrue(message(graph, "d").contains("No density is entered for LM25 of this casting"));
    assertTrue(
        message(graph, "y").contains("The yield of LM25 of this casting in this record cannot"),
        message(graph, "y"));
    assertEquals(Figure.State.FRESH, graph.figure("a").orElseThrow().state());
  }

  private static String message(ValueGraph graph, String name) {
    return graph.figure(name).orElseThrow().problem().orElseThrow().message();
  }

  @Test
  void anEditOfAMaterialReachesWhatNamesIt() {
    String lines = "a = 2 * material(\"LM25 of this casting\").poisson";
    ValueGraph graph = graph(List.of(CRANKCASE), lines);
    assertEquals(0.66, graph.figure("a").orElseThrow().si(), 1e-15);
    graph.update(
        source(
            List.of(new EnteredMaterial("LM25 of this casting", "", "", "0.3", "", "", "")),
            lines));
    assertEquals(0.6, graph.figure("a").orElseThrow().si(), 1e-15);
    graph.update(source(List.of(), lines));
    assertEquals(Figure.State.ERROR, graph.figure("a").orElseThrow().state());
  }

  @Test
  void aReadingIsCorrectedByIt() throws Exception {
    String json =
        """
        {"format":"endfloat-record","version":1,
         "title_block":{"title":"t","date":"2026-05-12"},
         "materials":[{"name":"LM25 of this casting","expansion":"20e-6 1/K","source":"test bar"}],
         "cells":[{"id":"c1","kind":"readings","title":"","readings":[
           {"name":"bore","unit":"mm","temperature":"30 degC","material":"LM25 of this casting",
            "entries":[{"taken":["100.00"]}]}]}]}
        """;
    InvestigationRecord record = InvestigationRecord.read(json.getBytes(StandardCharsets.UTF_8));
    ValueGraph graph = RecordGraph.of(record).graph();
    // L/(1 + 20e-6 · 10)
    assertEquals(0.1 / 1.0002, graph.figure("bore").orElseThrow().si(), 1e-15);
    assertEquals(
        "LM25 of this casting",
        Completion.at("a = material(\"", 14, graph.scope(), Catalogue.library())
            .options()
            .get(0)
            .label());
  }

  /** x - x has no uncertainty (JCGM 100:2008, 5.2.2), whatever x is called. */
  @Test
  void oneAlloyUnderTwoNamesHasOneError() {
    SheetOfLines sheet =
        SheetOfLines.of(
            """
            country [1/K] = material("aluminium 6061").expansion - material("Aluminum 6061").expansion
            standard [1/K] = material("En24").expansion - material("4340").expansion
            temper [1/K] = material("6061").expansion - material("6061-T6").expansion
            other [1/K] = material("6061").expansion - material("1100").expansion
            """);
    assertEquals(List.of(), sheet.errors());
    for (String name : List.of("country", "standard", "temper")) {
      assertEquals(0, (double) sheet.result(name).orElseThrow().u(), 1e-20, name);
    }
    assertEquals(
        23.6e-6 * 0.05 / Math.sqrt(3) * Math.sqrt(2),
        (double) sheet.result("other").orElseThrow().u(),
        1e-12);
  }
}

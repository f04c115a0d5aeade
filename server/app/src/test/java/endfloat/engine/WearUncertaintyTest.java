package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import endfloat.record.InvestigationRecord;
import org.junit.jupiter.api.Test;

/** What the readings' own uncertainty makes of a greatest, a least and their difference. */
class WearUncertaintyTest {
  private static final String BORE =
      """
      {"format": "endfloat-record", "version": 1, "title_block": {"title": "Bore"},
       "instruments": [{"id": "M", "offset": "0.010 mm", "scatter": "0.002 mm", "coverage": 2}],
       "cells": [
        {"id": "c1", "kind": "readings", "readings": [
          {"name": "d", "unit": "mm", "instrument": "M", "axes": ["plane", "direction"], "entries": [
            {"at": {"plane": "top", "direction": "thrust"}, "taken": ["104.011"]},
            {"at": {"plane": "top", "direction": "axial"}, "taken": ["104.006"]},
            {"at": {"plane": "bottom", "direction": "thrust"}, "taken": ["104.004"]},
            {"at": {"plane": "bottom", "direction": "axial"}, "taken": ["104.002"]}]}]},
        {"id": "c2", "kind": "working", "text": "bore = bore_wear(d)\\nwide [mm] = bore.greatest\\noval [mm] = bore.ovality\\nthin [mm] = bore.least"}]}
      """;

  private static double standardUncertainty(String name) throws Exception {
    ValueGraph graph =
        RecordGraph.of(InvestigationRecord.of(new ObjectMapper().readTree(BORE))).graph();
    return graph.figure(name).orElseThrow().standardUncertainty();
  }

  /** JCGM 100, 5.1.2: one reading of the instrument, offset U/2 = 5 um and scatter 2 um. */
  @Test
  void theGreatestDiameterIsAsUncertainAsTheReadingThatIsIt() throws Exception {
    assertEquals(Math.sqrt(29) * 1e-6, standardUncertainty("wide"), 1e-12);
  }

  /** JCGM 100, 5.2: the offset is in both readings and leaves the difference, the scatter stays. */
  @Test
  void theOffsetOfTheInstrumentLeavesTheOvalityAndTheScatterOfBothReadingsStays() throws Exception {
    assertEquals(Math.sqrt(8) * 1e-6, standardUncertainty("oval"), 1e-12);
  }

  /** Three equal readings: the least is one of them, not one and a half. */
  @Test
  void ofEqualReadingsOneIsTheLeast() throws Exception {
    String tied = BORE.replace("104.006", "104.002").replace("104.004", "104.002");
    ValueGraph graph =
        RecordGraph.of(InvestigationRecord.of(new ObjectMapper().readTree(tied))).graph();
    assertEquals(
        Math.sqrt(29) * 1e-6, graph.figure("thin").orElseThrow().standardUncertainty(), 1e-12);
  }
}

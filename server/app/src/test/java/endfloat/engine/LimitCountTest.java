package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import endfloat.record.InvestigationRecord;
import org.junit.jupiter.api.Test;

/** Sheet, shelf and report count limits by one rule. */
class LimitCountTest {
  private static LimitCount of(String... texts) {
    return LimitCount.of(ValueGraph.of(GraphSource.ofWorkings(texts)));
  }

  @Test
  void aLimitCountsOnceAValueThatItJudges() {
    assertEquals(
        new LimitCount(3, 0, 1, 0, 0),
        of("a = 2\nlimit a: at most 3\nlimit a: at least 1\nb = [2, 4]\nlimit b: at most 3"));
  }

  @Test
  void aLimitThatWaitsForAValueIsCountedAsWaiting() {
    assertEquals(
        new LimitCount(1, 0, 0, 1, 0),
        of("a = 2\nlimit a: at most 3\nb = 1 mm + 1 deg\nlimit b: at most 3 mm"));
  }

  @Test
  void aLimitWhoseOwnLineIsWrongIsCountedAsInError() {
    assertEquals(
        new LimitCount(0, 0, 0, 0, 3),
        of("a = 2\nlimit a: at most\nlimit a: 4 .. 3\nlimit a: at most 3 mm"));
  }

  @Test
  void rowsOfAScheduleCountLikeAnyOtherLimitAndWhatIsOnlyComparedDoesNot() throws Exception {
    String record =
        """
        {"format": "endfloat-record", "version": 1, "title_block": {"title": "T"},
         "cells": [
          {"id": "c1", "kind": "readings", "title": "", "readings": [
            {"name": "bore", "what": "", "unit": "mm", "entries": []}]},
          {"id": "c2", "kind": "fits", "title": "", "rows": [
            {"item": "1", "what": "worn, may stay", "measured": "0.25 mm", "unit": "mm",
             "new": {"low": "0.10", "high": "0.20"}, "worn": {"low": "", "high": "0.30"}},
            {"item": "2", "what": "not measured yet", "measured": "bore", "unit": "mm",
             "new": {"low": "", "high": "60.02"}, "worn": {"low": "", "high": ""}},
            {"item": "4", "what": "nobody has measured it, nor one of its parts", "unit": "mm",
             "new": {"low": "", "high": "60.02"},
             "sizes": [{"of": "p1", "new": {"low": "59.98", "high": ""}}, {"of": "p2"}]},
            {"item": "3", "what": "its limit cannot be read", "measured": "1 mm", "unit": "mm",
             "new": {"low": "", "high": "1 +"}, "worn": {"low": "", "high": ""}}]}]}
        """;
    InvestigationRecord read = InvestigationRecord.of(new ObjectMapper().readTree(record));
    assertEquals(new LimitCount(1, 0, 0, 3, 1), LimitCount.of(RecordGraph.of(read).graph()));
  }
}

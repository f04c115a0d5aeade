package endfloat.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.EditRefusedException;
import endfloat.record.InvestigationRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A value gets another name wherever the record names it, and nowhere else. */
class ValueRenameTest {
  private static final String RECORD =
      """
      {"format":"endfloat-record","version":1,"title_block":{"title":"Bush"},"cells":[
      {"id":"r","kind":"readings","readings":[{"name":"bore","unit":"mm","entries":[{"taken":["22.04"]}]}]},
      {"id":"w","kind":"working","text":"gap [mm] = bore - shaft -- the bore is worn\\nshaft [mm] = 22 mm\\nlimit gap: at most bore / 100 \\"bore table\\"\\nf [mm] = hot_clearance(bore: bore, shaft: shaft)\\nbore_2 [mm] = f.bore"},
      {"id":"n","kind":"note","text":"The bore is {bore}, at the top { bore.max}; {bore_2} is not it."},
      {"id":"f","kind":"fits","rows":[{"item":"1","what":"bore","measured":"bore - shaft","unit":"mm","new":{"high":"bore/200"},"sizes":[{"of":"bore","measured":"bore"}]}]},
      {"id":"k","kind":"causes","observed":"bore","needed":"2 * bore","causes":[{"id":"k1","name":"bore","contribution":"bore - 22 mm"}]}]}
      """;

  private static InvestigationRecord record() {
    return InvestigationRecord.read(RECORD.getBytes(StandardCharsets.UTF_8));
  }

  private final FrailDisk disk = new FrailDisk(new Random(1));

  private OpenSheet open() throws IOException {
    disk.plant(TwoClients.PLACE.file(), record().write());
    return TwoClients.open(disk, TwoClients.clock());
  }

  private static String cell(OpenSheet sheet, String id) {
    return sheet.snapshot().record().cell(id).orElseThrow().source().toString();
  }

  @Test
  void aNameIsExchangedInReadingsWorkingsLimitsNotesSchedulesAndCauses() throws IOException {
    OpenSheet sheet = open();
    Change change = ValueRename.of(record(), "bore", "bush_bore");
    assertInstanceOf(Answer.Kept.class, sheet.apply(new Edit("e1", "", "page", "", 0, change)));
    assertTrue(cell(sheet, "r").contains("\"name\":\"bush_bore\""), cell(sheet, "r"));
    assertEquals(
        "gap [mm] = bush_bore - shaft -- the bore is worn\n"
            + "shaft [mm] = 22 mm\n"
            + "limit gap: at most bush_bore / 100 \"bore table\"\n"
            + "f [mm] = hot_clearance(bore: bush_bore, shaft: shaft)\n"
            + "bore_2 [mm] = f.bore",
        sheet.snapshot().record().cell("w").orElseThrow().text());
    assertEquals(
        "The bore is {bush_bore}, at the top { bush_bore.max}; {bore_2} is not it.",
        sheet.snapshot().record().cell("n").orElseThrow().text());
    String fits = cell(sheet, "f");
    assertTrue(fits.contains("\"measured\":\"bush_bore - shaft\""), fits);
    assertTrue(fits.contains("\"high\":\"bush_bore/200\""), fits);
    assertTrue(fits.contains("\"what\":\"bore\"") && fits.contains("\"of\":\"bore\""), fits);
    String causes = cell(sheet, "k");
    assertTrue(causes.contains("\"needed\":\"2 * bush_bore\""), causes);
    assertTrue(causes.contains("\"contribution\":\"bush_bore - 22 mm\""), causes);
    assertTrue(causes.contains("\"name\":\"bore\""), causes);
  }

  @Test
  void javaAndTablesNameItAnewAndTheirTextsAndCommentsDoNot() throws IOException {
    InvestigationRecord record =
        InvestigationRecord.read(
            """
            {"format":"endfloat-record","version":1,"title_block":{"title":"Bush"},"cells":[
            {"id":"w","kind":"working","text":"bore_hot [mm] = 22.1 mm\\nused [mm] = gap + max(wear.lash)"},
            {"id":"t","kind":"table","name":"wear","columns":[{"head":"lash","kind":"number","unit":"mm"},{"head":"left","kind":"number","unit":"mm","formula":"bore_hot - wear.lash"}],"rows":[["1"]],"limits":["limit wear.left: at least bore_hot / 2"]},
            {"id":"j","kind":"java","gives":"gap [mm], curve: table(gap [mm])","text":"// boreHot\\ngap = boreHot.minus(wearLash.get(0)); String s = \\"boreHot\\";"}]}
            """
                .getBytes(StandardCharsets.UTF_8));
    disk.plant(TwoClients.PLACE.file(), record.write());
    OpenSheet sheet = TwoClients.open(disk, TwoClients.clock());
    String[][] names = {{"bore_hot", "bush_warm"}, {"gap", "hot_gap"}, {"wear", "tear"}};
    for (String[] name : names) {
      Change change = ValueRename.of(sheet.snapshot().record(), name[0], name[1]);
      long seen = sheet.snapshot().revision();
      sheet.apply(new Edit("e" + name[0], "", "page", "", seen, change));
    }
    assertEquals(
        "// boreHot\nhotGap = bushWarm.minus(tearLash.get(0)); String s = \"boreHot\";",
        sheet.snapshot().record().cell("j").orElseThrow().text());
    assertTrue(cell(sheet, "j").contains("\"hot_gap [mm], curve: table(gap [mm])\""));
    assertTrue(cell(sheet, "w").contains("used [mm] = hot_gap + max(tear.lash)"));
    assertTrue(cell(sheet, "t").contains("\"bush_warm - tear.lash\""), cell(sheet, "t"));
    assertTrue(cell(sheet, "t").contains("limit tear.left: at least bush_warm / 2"));
    for (String no : new String[] {"s", "double"}) {
      InvestigationRecord now = sheet.snapshot().record();
      assertThrows(EditRefusedException.class, () -> ValueRename.of(now, "bush_warm", no), no);
    }
  }

  @Test
  void oneUndoTakesTheWholeOfItBackAndItOutlivesTheProgram() throws IOException {
    OpenSheet sheet = open();
    String before = sheet.snapshot().record().tree().path("cells").toString();
    sheet.apply(new Edit("e1", "", "page", "", 0, ValueRename.of(record(), "bore", "bush_bore")));
    String renamed = sheet.snapshot().record().tree().path("cells").toString();
    sheet.close();
    OpenSheet again = TwoClients.open(disk, TwoClients.clock());
    assertEquals(renamed, again.snapshot().record().tree().path("cells").toString());
    again.apply(new Edit("e2", "", "page", "", Long.MAX_VALUE, Change.undo()));
    assertEquals(before, again.snapshot().record().tree().path("cells").toString());
    again.apply(new Edit("e3", "", "page", "", Long.MAX_VALUE, Change.redo()));
    assertEquals(renamed, again.snapshot().record().tree().path("cells").toString());
  }

  @Test
  void aPlaceThatAnotherPageChangedSinceIsNotTypedOver() throws IOException {
    OpenSheet sheet = open();
    Change text = Change.put("n", "/text", new com.fasterxml.jackson.databind.node.TextNode("x"));
    sheet.apply(new Edit("e1", "other", "other", "", 0, text));
    Change change = ValueRename.of(record(), "bore", "bush_bore");
    assertInstanceOf(Answer.Refused.class, sheet.apply(new Edit("e2", "", "page", "", 0, change)));
    assertTrue(cell(sheet, "r").contains("\"name\":\"bore\""));
  }

  @Test
  void aNameThatIsTakenOrNoneIsRefused() {
    for (String to : new String[] {"shaft", "gap", "2nd", "two words", "limit", "", "a-b"}) {
      assertThrows(EditRefusedException.class, () -> ValueRename.of(record(), "bore", to), to);
    }
    assertThrows(EditRefusedException.class, () -> ValueRename.of(record(), "no_such", "x"));
  }
}

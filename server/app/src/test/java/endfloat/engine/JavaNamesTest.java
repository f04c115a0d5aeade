package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of the record in Java source. */
class JavaNamesTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "lash",
        "lash_cold",
        "lash_2",
        "bore_OD",
        "q_12_b",
        "wear.lash",
        "wear_rate.lash_2",
        "T_block",
        "E",
        "bore_A",
        "bore_A1_top",
        "d1_new",
        "\u03b1_steel"
      })
  void aNameIsFoundAgainByItsCamelCase(String name) {
    String source = "double x = " + JavaNames.camel(name) + ".si();";
    assertTrue(JavaNames.maybeRead(source).contains(name), JavaNames.camel(name));
  }

  @Test
  void wordsOfJavaItselfTextsAndCommentsReadNothing() {
    Set<String> read =
        JavaNames.maybeRead(
            "// bore\n/* shaft */ String s = \"gap \\\" play\" + '\\'' + \"\"\"\n wear\"\"\";\n"
                + "x.bush().seat; this.own; run(); Length.class; a.b.c");
    for (String no : List.of("bore", "shaft", "gap", "play", "wear", "bush", "seat", "run", "b")) {
      assertTrue(!read.contains(no), no);
    }
    assertTrue(read.containsAll(List.of("s", "x", "own", "a")));
    assertTrue(!read.contains("Length"), "the class is no value");
  }

  @Test
  void oneNameIsExchangedWhereItIsReadOrGivenAndNowhereElse() {
    assertEquals(
        "// bore of the bush\n"
            + "gap = bushBore.minus(shaft); this.bushBore.bore(); bore(1); other.bore = \"bore\";\n"
            + "var boreMax = 'b' + \"\"\"\n bore \"\"\".length() + bushBore.si();",
        JavaNames.renamed(
            "// bore of the bush\n"
                + "gap = bore.minus(shaft); this.bore.bore(); bore(1); other.bore = \"bore\";\n"
                + "var boreMax = 'b' + \"\"\"\n bore \"\"\".length() + bore.si();",
            "bore",
            "bushBore"));
  }

  @Test
  void ofARecordOfResultsItIsKnownWhichFieldsASourceNames() {
    String some = "x = joint.pressure.si() + joint\n  .torque.si(); // joint\n \"joint\";";
    assertEquals(Set.of("pressure", "torque"), JavaNames.fieldsRead(some, "joint"));
    assertEquals(Set.of(), JavaNames.fieldsRead("var all = joint;" + some, "joint"));
  }

  @Test
  void theHeadOfAClauseIsRenamedByItsNamesAlone() {
    assertEquals(
        " play [mm], curve: table(lash [mm]), lash_2: text",
        GivesHead.renamed(" lash [mm], curve: table(lash [mm]), lash_2: text", "lash", "play"));
  }
}

package endfloat.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.Test;

class CanonicalJsonTest {
  private static String canonical(String json) {
    JsonNode tree = RecordJson.read(json.getBytes(StandardCharsets.UTF_8));
    return new String(CanonicalJson.bytes(tree), StandardCharsets.UTF_8);
  }

  /** RFC 8785, 3.2.2 (input) and 3.2.3 (output); written down from memory of the RFC. */
  @Test
  void makesOfTheExampleOfRfc8785WhatTheRfcPrints() {
    assertEquals(
        "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
            + "\"string\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}",
        canonical(
            "{\"numbers\": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],"
                + " \"string\": \"\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\\"\\/\","
                + " \"literals\": [null, true, false]}"));
  }

  /**
   * A second method: the published implementation of the RFC's author, which parses text itself.
   */
  @Property(tries = 500)
  void agreesWithThePublishedImplementation(@ForAll("trees") JsonNode tree) throws IOException {
    String text = PrettyJson.compact(tree);
    assertEquals(
        new JsonCanonicalizer(text).getEncodedString(),
        new String(CanonicalJson.bytes(tree), StandardCharsets.UTF_8));
  }

  @Property(tries = 500)
  void isReadAgainAsTheTreeThatWasWritten(@ForAll("trees") JsonNode tree) {
    byte[] written = PrettyJson.bytes(tree);
    JsonNode read = RecordJson.read(written);
    assertEquals(
        new String(CanonicalJson.bytes(tree), StandardCharsets.UTF_8),
        new String(CanonicalJson.bytes(read), StandardCharsets.UTF_8));
    assertEquals(
        new String(written, StandardCharsets.UTF_8),
        new String(PrettyJson.bytes(read), StandardCharsets.UTF_8));
  }

  @Provide
  Arbitrary<JsonNode> trees() {
    return objects(3).map(node -> node);
  }

  private static Arbitrary<JsonNode> objects(int depth) {
    return Arbitraries.maps(texts(), nodes(depth))
        .ofMaxSize(6)
        .map(
            (Map<String, JsonNode> fields) -> {
              ObjectNode object = JsonNodeFactory.instance.objectNode();
              fields.forEach(object::set);
              return object;
            });
  }

  private static Arbitrary<JsonNode> nodes(int depth) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    Arbitrary<JsonNode> text = texts().map(make::textNode);
    Arbitrary<JsonNode> number =
        Arbitraries.oneOf(
            Arbitraries.doubles().map(make::numberNode),
            Arbitraries.integers().map(make::numberNode),
            Arbitraries.of(1e21, 1e-7, 2e23, 5e-324, 1e-6, -0.0, 1.7976931348623157e308)
                .map(make::numberNode));
    Arbitrary<JsonNode> literal = Arbitraries.of(make.nullNode(), make.booleanNode(true));
    if (depth == 0) {
      return Arbitraries.oneOf(text, number, literal);
    }
    Arbitrary<JsonNode> list =
        nodes(depth - 1)
            .list()
            .ofMaxSize(5)
            .map(
                (List<JsonNode> elements) -> {
                  ArrayNode array = make.arrayNode();
                  elements.forEach(array::add);
                  return array;
                });
    return Arbitraries.oneOf(text, number, literal, list, objects(depth - 1));
  }

  private static Arbitrary<String> texts() {
    return Arbitraries.strings()
        .all()
        .ofMaxLength(12)
        .filter(
            text ->
                text.equals(
                    new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8)));
  }
}

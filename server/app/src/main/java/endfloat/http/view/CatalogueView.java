package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Check;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Part;
import endfloat.catalogue.Result;
import java.util.List;
import java.util.Locale;

/**
 * The catalogue as JSON, the same for the reference page and for {@code endfloat catalogue --json}.
 */
public final class CatalogueView {
  private CatalogueView() {}

  /** {@code {calculations: [{name, subject, summary, terms}]}}. */
  public static ObjectNode list(Catalogue catalogue) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    ArrayNode calculations = view.putArray("calculations");
    for (Calculation calculation : catalogue.all()) {
      ObjectNode entry = calculations.addObject();
      entry.put("name", calculation.name()).put("subject", calculation.subject());
      entry.put("summary", calculation.summary());
      texts(entry.putArray("terms"), calculation.terms());
    }
    return view;
  }

  /** One calculation with all that is known of it. */
  public static ObjectNode of(Catalogue catalogue, Calculation calculation) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("name", calculation.name()).put("subject", calculation.subject());
    view.put("summary", calculation.summary()).put("description", calculation.description());
    view.put("call", call(calculation));
    ArrayNode parameters = view.putArray("parameters");
    calculation.parameters().forEach(one -> parameters.add(parameter(one)));
    ArrayNode results = view.putArray("results");
    calculation.results().forEach(one -> results.add(result(one)));
    view.put("source", calculation.source());
    texts(view.putArray("cautions"), calculation.cautions());
    texts(view.putArray("terms"), calculation.terms());
    calculation.formula().ifPresent(formula -> view.put("formula", formula));
    view.put("heavy", calculation.heavy());
    ArrayNode checks = view.putArray("checks");
    catalogue.checks(calculation.name()).forEach(one -> checks.add(check(one)));
    return view;
  }

  /** How it is written: every argument that must be given, those that need not in brackets. */
  private static String call(Calculation calculation) {
    StringBuilder call = new StringBuilder(calculation.name()).append('(');
    String between = "";
    for (Parameter parameter : calculation.parameters()) {
      call.append(between).append(parameter.name()).append(": ");
      call.append(parameter.fallback().orElse("…"));
      between = ", ";
    }
    return call.append(')').toString();
  }

  static ObjectNode parameter(Parameter parameter) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("name", parameter.name()).put("description", parameter.description());
    view.put("form", word(parameter.form())).put("unit", parameter.unit());
    parameter.range().ifPresent(range -> view.put("range", range.text()));
    parameter.fallback().ifPresent(fallback -> view.put("default", fallback));
    if (!parameter.choices().isEmpty()) {
      texts(view.putArray("choices"), parameter.choices());
    }
    parameter.part().ifPresent(part -> view.set("part", part(part)));
    return view;
  }

  private static ObjectNode part(Part part) {
    ObjectNode view = JsonNodeFactory.instance.objectNode().put("name", part.name());
    ArrayNode components = view.putArray("components");
    part.components().forEach(one -> components.add(parameter(one)));
    return view;
  }

  static ObjectNode result(Result result) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("name", result.name()).put("description", result.description());
    view.put("form", word(result.form())).put("unit", result.unit());
    if (!result.choices().isEmpty()) {
      texts(view.putArray("choices"), result.choices());
    }
    return view;
  }

  private static ObjectNode check(Check check) {
    ObjectNode view = JsonNodeFactory.instance.objectNode().put("id", check.id());
    view.put("what", check.what()).put("source", check.source());
    view.put("knowledge", check.knowledge());
    texts(view.putArray("lines"), check.lines());
    ArrayNode expected = view.putArray("expected");
    for (Check.Expectation expectation : check.expectations()) {
      if (expectation instanceof Check.Numbers numbers) {
        ObjectNode one = expected.addObject().put("name", numbers.place());
        texts(one.putArray("values"), numbers.values());
        one.put("unit", numbers.unit()).put("tolerance", numbers.tolerance());
        one.put("relative", numbers.relative());
      } else if (expectation instanceof Check.Words words) {
        expected.addObject().put("name", words.place()).put("text", words.text());
      } else if (expectation instanceof Check.Refusal refusal) {
        expected.addObject().put("refused", refusal.words());
      }
    }
    return view;
  }

  private static String word(Enum<?> form) {
    return form.name().toLowerCase(Locale.ROOT);
  }

  private static void texts(ArrayNode into, List<String> texts) {
    texts.forEach(into::add);
  }
}

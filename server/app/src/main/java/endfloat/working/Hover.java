package endfloat.working;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Result;
import endfloat.definition.Default;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What is known of a word of a working, for a person who points at it.
 *
 * @param title such as {@code thermal_growth(length, expansion, temperature_change)}
 * @param lines what it is, its arguments, its source and cautions
 */
public record Hover(String title, List<String> lines) {

  /** Of the token that stands at an offset of a working; empty where nothing is known of it. */
  public static Optional<Hover> at(String text, int offset, Scope scope, Catalogue catalogue) {
    SourceText source = new SourceText(text);
    for (Token token : Parser.parse(text).tokens()) {
      int from = source.start(token.span().line()) + token.span().from() - 1;
      int to = source.start(token.span().line()) + token.span().to() - 1;
      if (from <= offset && offset <= to) {
        String word = text.substring(from, to);
        Optional<Hover> known =
            switch (token.kind()) {
              case "name" -> name(Letters.name(word), scope);
              case "function" -> function(Letters.name(word), catalogue);
              case "unit" -> unit(word);
              default -> Optional.empty();
            };
        if (known.isPresent()) {
          return known;
        }
      }
    }
    return Optional.empty();
  }

  /** Of a name of the record, or else of a function. */
  public static Optional<Hover> of(String word, Scope scope, Catalogue catalogue) {
    return name(word, scope).or(() -> function(word, catalogue));
  }

  private static Optional<Hover> name(String name, Scope scope) {
    String unit = scope.unitOf(name).map(u -> ", " + u.print()).orElse("");
    return scope.kindOf(name).map(k -> new Hover(name, List.of(KindWords.words(k) + unit)));
  }

  private static Optional<Hover> function(String name, Catalogue catalogue) {
    String arguments = FunctionKinds.signatures().get(name);
    if (arguments != null) {
      return Optional.of(
          new Hover(name + "(" + arguments + ")", List.of("a function of the language")));
    }
    return catalogue
        .find(name)
        .map(Hover::calculation)
        .or(
            () ->
                catalogue
                    .part(name)
                    .map(
                        p ->
                            new Hover(
                                name + "(" + CompletionOptions.signature(p.components()) + ")",
                                p.components().stream().map(Hover::said).toList())));
  }

  private static Hover calculation(Calculation calculation) {
    List<String> lines = new ArrayList<>();
    lines.add(calculation.summary());
    calculation.parameters().forEach(p -> lines.add(said(p)));
    lines.add(
        "gives "
            + calculation.results().stream().map(Hover::said).collect(Collectors.joining("; ")));
    lines.add("source: " + calculation.source());
    calculation.cautions().forEach(c -> lines.add("caution: " + c));
    return new Hover(
        calculation.name() + "(" + CompletionOptions.signature(calculation.parameters()) + ")",
        List.copyOf(lines));
  }

  private static String said(Parameter parameter) {
    return parameter.name()
        + (parameter.unit().isEmpty() ? "" : " [" + parameter.unit() + "]")
        + ": "
        + parameter.description()
        + parameter.range().map(r -> ", " + r.text()).orElse("")
        + parameter
            .fallback()
            .map(f -> f.equals(Default.NOT_GIVEN) ? ", may be left out" : ", " + f + " if left out")
            .orElse("");
  }

  private static String said(Result result) {
    String unit = result.unit().isEmpty() ? "" : " [" + result.unit() + "]";
    return (result.name().isEmpty() ? "" : result.name() + unit + ": ")
        + result.description()
        + (result.name().isEmpty() ? unit : "");
  }

  private static Optional<Hover> unit(String symbol) {
    return UnitTable.entries().stream()
        .filter(e -> e.symbol().equals(symbol) || e.aliases().contains(symbol))
        .findFirst()
        .map(e -> new Hover(e.symbol(), List.of(e.meaning(), e.unit().dimension().words())));
  }
}

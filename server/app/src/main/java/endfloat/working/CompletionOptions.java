package endfloat.working;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Part;
import endfloat.definition.Default;
import endfloat.materials.Material;
import endfloat.units.UnitTable;
import endfloat.working.Completion.Option;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Everything that can be written, by what it is. */
final class CompletionOptions {
  private final Scope scope;
  private final Catalogue catalogue;

  CompletionOptions(Scope scope, Catalogue catalogue) {
    this.scope = scope;
    this.catalogue = catalogue;
  }

  List<Option> words(List<String> words) {
    return words.stream().map(w -> new Option(w, "", w + " ", "word")).toList();
  }

  List<Option> names() {
    List<Option> names = new ArrayList<>();
    for (String name : scope.names()) {
      names.add(new Option(name, described(name), name, "name"));
    }
    names.add(new Option("pi", "half a turn, in radians", "pi", "name"));
    return names;
  }

  /** Whether a name is a yes or no. */
  boolean isTruth(String name) {
    return scope.kindOf(name).filter(Kind.Truth.class::isInstance).isPresent();
  }

  private String described(String name) {
    String unit = scope.unitOf(name).map(u -> ", " + u.print()).orElse("");
    return scope.kindOf(name).map(k -> KindWords.words(k) + unit).orElse("");
  }

  List<Option> units() {
    return UnitTable.entries().stream()
        .map(e -> new Option(e.symbol(), e.meaning(), e.symbol(), "unit"))
        .toList();
  }

  List<Option> fields(String path) {
    String[] parts = path.split("\\.", -1);
    Optional<Kind> kind = scope.kindOf(parts[0]).map(Kinds::element);
    for (int i = 1; i < parts.length && kind.isPresent(); i++) {
      String part = parts[i];
      kind =
          kind.filter(Kind.Fields.class::isInstance)
              .map(k -> ((Kind.Fields) k).fields().get(part))
              .map(Kinds::element);
    }
    if (kind.isEmpty() || !(kind.get() instanceof Kind.Fields fields)) {
      return List.of();
    }
    return fields.fields().entrySet().stream()
        .map(e -> new Option(e.getKey(), KindWords.words(e.getValue()), e.getKey(), "field"))
        .toList();
  }

  List<Option> functions() {
    List<Option> functions = new ArrayList<>();
    for (Map.Entry<String, String> function : FunctionKinds.signatures().entrySet()) {
      functions.add(
          new Option(
              function.getKey(),
              "(" + function.getValue() + ")",
              function.getKey() + "(",
              "function"));
    }
    for (Calculation calculation : catalogue.all()) {
      functions.add(
          new Option(
              calculation.name(), calculation.summary(), calculation.name() + "(", "function"));
    }
    for (String part : catalogue.parts()) {
      String components = catalogue.part(part).map(p -> signature(p.components())).orElse("");
      functions.add(new Option(part, "(" + components + ")", part + "(", "function"));
    }
    return functions;
  }

  static String signature(List<Parameter> parameters) {
    return parameters.stream().map(Parameter::name).collect(Collectors.joining(", "));
  }

  private Optional<List<Parameter>> parameters(String function) {
    return catalogue
        .find(function)
        .map(Calculation::parameters)
        .or(() -> catalogue.part(function).map(Part::components));
  }

  /**
   * Names of arguments that a call still takes.
   *
   * @param position how many arguments stand before
   */
  List<Option> arguments(String function, Set<String> given, int position) {
    if (parameters(function).isEmpty()) {
      return FunctionKinds.named(function).entrySet().stream()
          .filter(one -> !given.contains(one.getKey()))
          .map(
              one ->
                  new Option(one.getKey() + ":", one.getValue(), one.getKey() + ": ", "argument"))
          .toList();
    }
    List<Parameter> parameters = parameters(function).orElse(List.of());
    int byPosition = Math.max(0, position - given.size());
    List<Option> arguments = new ArrayList<>();
    for (int i = byPosition; i < parameters.size(); i++) {
      Parameter parameter = parameters.get(i);
      if (!given.contains(parameter.name())) {
        arguments.add(
            new Option(
                parameter.name() + ":", said(parameter), parameter.name() + ": ", "argument"));
      }
    }
    return arguments;
  }

  private static String said(Parameter parameter) {
    String unit = parameter.unit().isEmpty() ? "" : "[" + parameter.unit() + "] ";
    String fallback =
        parameter
            .fallback()
            .map(f -> f.equals(Default.NOT_GIVEN) ? ", may be left out" : ", " + f + " if left out")
            .orElse("");
    return unit + parameter.description() + fallback;
  }

  /** Texts that fit between the quotes at hand. */
  List<Option> texts(CompletionPlace.Call call, String limitNote) {
    if (!limitNote.isEmpty()) {
      return switch (limitNote) {
        case "state" -> texts(List.of("new", "worn"));
        case "rule" -> texts(List.of("simple", "guarded", "probability"));
        default -> texts(List.of("cold", "hot", "free", "clamped"));
      };
    }
    if (call == null) {
      return List.of();
    }
    if (call.function().equals("material") || call.argument().startsWith("material")) {
      Set<String> materials = new LinkedHashSet<>(scope.materials());
      materials.addAll(Material.names());
      return texts(materials);
    }
    if (call.argument().equals("over")) {
      return scope
          .kindOf(call.first())
          .filter(Kind.Series.class::isInstance)
          .map(k -> texts(((Kind.Series) k).axes()))
          .orElse(List.of());
    }
    if (call.argument().equals("stage")) {
      return texts(List.of("as found", "cleaned", "after rework", "as left"));
    }
    List<Parameter> parameters = parameters(call.function()).orElse(List.of());
    if (call.argument().isEmpty()) {
      return call.position() < parameters.size()
          ? texts(parameters.get(call.position()).choices())
          : List.of();
    }
    return parameters.stream()
        .filter(p -> p.name().equals(call.argument()))
        .findFirst()
        .map(p -> texts(p.choices()))
        .orElse(List.of());
  }

  private static List<Option> texts(Collection<String> texts) {
    return texts.stream().map(t -> new Option(t, "", t, "text")).toList();
  }
}

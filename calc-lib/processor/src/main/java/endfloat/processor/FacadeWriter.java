package endfloat.processor;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.quantities.Kinds;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.RecordComponentElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.element.VariableElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.util.Elements;

/**
 * Writes the typed face of one subject: a class with a method a calculation, in which every number
 * is a quantity of its kind, so that a mass does not go where a length is wanted.
 */
final class FacadeWriter {
  static final String PACKAGE = "endfloat.formulas";

  private final Elements elements;
  private final Map<String, String> parts = new TreeMap<>();
  private final StringBuilder methods = new StringBuilder();

  FacadeWriter(Elements elements) {
    this.elements = elements;
  }

  String text(String subject) {
    return "package "
        + PACKAGE
        + ";\n\nimport endfloat.catalogue.TypedCall;\nimport endfloat.quantities.*;\nimport java.util.List;\n"
        + "import javax.measure.Quantity;\nimport javax.measure.quantity.*;\n\n"
        + "/** The calculations of "
        + subject
        + ", in typed quantities; generated from the annotated methods. */\n"
        + "@SuppressWarnings(\"all\")\npublic final class "
        + Names.capital(subject)
        + " {\n  private "
        + Names.capital(subject)
        + "() {}\n\n"
        + String.join("", parts.values())
        + methods
        + "}\n";
  }

  void add(ExecutableElement method, List<? extends VariableElement> shown) {
    String name = camel(EntryWriter.nameOf(method));
    Set<String> variables = new LinkedHashSet<>();
    String result = resultType(method, name, variables);
    List<VariableElement> needed = new ArrayList<>();
    for (VariableElement parameter : shown) {
      if (parameter.getAnnotation(Default.class) == null) {
        needed.add(parameter);
      }
    }
    String declared = parameters(shown, variables);
    String generic =
        variables.isEmpty()
            ? ""
            : variables.stream()
                .map(v -> v + " extends Quantity<" + v + ">")
                .collect(Collectors.joining(", ", "<", "> "));
    String doc = JavadocText.of(elements.getDocComment(method)).summary();
    method(doc, generic + result, name, declared);
    methods
        .append("    TypedCall call = TypedCall.of(")
        .append(
            shown.stream()
                .map(p -> p.getSimpleName().toString())
                .collect(
                    Collectors.joining(
                        ", ",
                        Names.literal(EntryWriter.nameOf(method)) + (shown.isEmpty() ? "" : ", "),
                        ");\n    return ")))
        .append(taken(method, result))
        .append(";\n  }\n\n");
    if (needed.size() < shown.size()) {
      method(
          doc + " With the usual values of the rest.",
          generic + result,
          name,
          parameters(needed, variables));
      methods
          .append("    return ")
          .append(name)
          .append('(')
          .append(
              shown.stream()
                  .map(p -> needed.contains(p) ? p.getSimpleName().toString() : "null")
                  .collect(Collectors.joining(", ")))
          .append(");\n  }\n\n");
    }
  }

  private void method(String doc, String before, String name, String declared) {
    methods
        .append("  /** ")
        .append(doc.replace("*/", "* /").replace("@", "&#64;"))
        .append(" */\n  public static ")
        .append(before)
        .append(' ')
        .append(name)
        .append('(')
        .append(declared)
        .append(") {\n");
  }

  private String parameters(List<? extends VariableElement> shown, Set<String> variables) {
    return shown.stream()
        .map(p -> argumentType(p, p.asType(), variables) + " " + p.getSimpleName())
        .collect(Collectors.joining(", "));
  }

  private String argumentType(Element element, TypeMirror type, Set<String> variables) {
    return switch (ParameterWriter.form(element, type)) {
      case "QUANTITY" -> "Measured<" + kind(element, variables) + ">";
      case "LIST" -> "List<Measured<" + kind(element, variables) + ">>";
      case "INDEXED" -> "MeasuredSeries<" + kind(element, variables) + ">";
      case "TEXT" -> "String";
      case "CHOICE" -> type.toString();
      default -> "List<" + part(ParameterWriter.partOf(type)) + ">";
    };
  }

  /** A part with typed components. */
  private String part(TypeElement part) {
    String name = part.getSimpleName().toString();
    if (!parts.containsKey(name)) {
      Set<String> none = new LinkedHashSet<>();
      String components =
          part.getRecordComponents().stream()
              .map(c -> argumentType(c, c.asType(), none) + " " + c.getSimpleName())
              .collect(Collectors.joining(", "));
      String values =
          part.getRecordComponents().stream()
              .map(c -> c.getSimpleName().toString())
              .collect(Collectors.joining(", "));
      parts.put(
          name,
          "  /** One of a list that a calculation takes. */\n  public record "
              + name
              + "("
              + components
              + ") implements TypedCall.Part {\n    @Override\n    public Object[] components() {\n"
              + "      return new Object[] {"
              + values
              + "};\n    }\n  }\n\n");
    }
    return name;
  }

  private String resultType(ExecutableElement method, String name, Set<String> variables) {
    TypeMirror type = method.getReturnType();
    if (!isRecord(type)) {
      return type(method, type, variables);
    }
    String result = Names.capital(name) + "Result";
    TypeElement fields = (TypeElement) ((DeclaredType) type).asElement();
    String components =
        fields.getRecordComponents().stream()
            .map(c -> type(c, c.asType(), variables) + " " + c.getSimpleName())
            .collect(Collectors.joining(", "));
    String generic =
        variables.isEmpty()
            ? ""
            : variables.stream()
                .map(v -> v + " extends Quantity<" + v + ">")
                .collect(Collectors.joining(", ", "<", ">"));
    parts.put(
        result,
        "  /** What {@code "
            + name
            + "} gives; a value that it has none of is null. */\n  public record "
            + result
            + generic
            + "("
            + components
            + ") {}\n\n");
    return variables.isEmpty() ? result : result + "<" + String.join(", ", variables) + ">";
  }

  private static String taken(ExecutableElement method, String result) {
    if (!isRecord(method.getReturnType())) {
      return "call.get(0)";
    }
    List<String> all = new ArrayList<>();
    TypeElement fields = (TypeElement) ((DeclaredType) method.getReturnType()).asElement();
    for (RecordComponentElement ignored : fields.getRecordComponents()) {
      all.add("call.get(" + all.size() + ")");
    }
    return "new "
        + (result.contains("<") ? result.substring(0, result.indexOf('<')) + "<>" : result)
        + "("
        + String.join(", ", all)
        + ")";
  }

  private static String type(Element element, TypeMirror type, Set<String> variables) {
    String name = type.toString().replaceAll("@\\S+(\\([^)]*\\))?\\s+", "");
    return switch (name) {
      case "double", "endfloat.units.Uncertain" -> "Measured<" + kind(element, variables) + ">";
      case "double[]" -> "List<Measured<" + kind(element, variables) + ">>";
      case "boolean" -> "Boolean";
      default -> "String";
    };
  }

  private static String kind(Element element, Set<String> variables) {
    String unit = element.getAnnotation(In.class).value();
    if (unit.matches("<\\w+>[/-]<\\w+>")) {
      return "?";
    }
    if (unit.startsWith("<")) {
      String variable = unit.substring(1, unit.length() - 1).toUpperCase(java.util.Locale.ROOT);
      variables.add(variable);
      return variable;
    }
    Unit known = UnitTable.find(unit);
    return known.isTemperaturePoint()
        ? "Temperature"
        : Kinds.of(known.dimension()).map(Kinds::name).orElse("?");
  }

  private static boolean isRecord(TypeMirror type) {
    return type instanceof DeclaredType declared
        && declared.asElement().getKind() == ElementKind.RECORD
        && !type.toString().endsWith("endfloat.units.Uncertain");
  }

  private static String camel(String snake) {
    StringBuilder camel = new StringBuilder();
    for (String word : snake.split("_", -1)) {
      camel.append(camel.length() == 0 ? word : Names.capital(word));
    }
    return camel.toString();
  }
}

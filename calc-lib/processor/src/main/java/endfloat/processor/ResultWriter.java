package endfloat.processor;

import endfloat.definition.In;
import java.util.ArrayList;
import java.util.List;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.RecordComponentElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.util.Elements;

/** Writes the catalogue's results, and how they are taken out of what the method gives. */
final class ResultWriter {
  private final Elements elements;

  ResultWriter(Elements elements) {
    this.elements = elements;
  }

  /** {@code List.of(new Result(...), ...)}. */
  String declarations(ExecutableElement method, JavadocText javadoc) {
    TypeMirror type = method.getReturnType();
    if (!isRecord(type)) {
      return "List.of(" + declaration(method, "", type, javadoc.result()) + ")";
    }
    TypeElement fields = (TypeElement) ((DeclaredType) type).asElement();
    JavadocText texts = JavadocText.of(elements.getDocComment(fields));
    List<String> results = new ArrayList<>();
    for (RecordComponentElement component : fields.getRecordComponents()) {
      String name = component.getSimpleName().toString();
      results.add(
          declaration(
              component,
              Names.snake(name),
              component.asType(),
              texts.parameters().getOrDefault(name, "")));
    }
    return "List.of(\n        " + String.join(",\n        ", results) + ")";
  }

  /** Statements that call the method and hand back its results in order. */
  String body(ExecutableElement method, String call) {
    TypeMirror type = method.getReturnType();
    if (!isRecord(type)) {
      return "return new Object[] {" + given("(" + call + ")", type) + "};";
    }
    TypeElement fields = (TypeElement) ((DeclaredType) type).asElement();
    List<String> given = new ArrayList<>();
    for (RecordComponentElement component : fields.getRecordComponents()) {
      given.add(given("r." + component.getSimpleName() + "()", component.asType()));
    }
    return fields.getQualifiedName()
        + " r = "
        + call
        + ";\n      return new Object[] {"
        + String.join(", ", given)
        + "};";
  }

  private static String given(String value, TypeMirror type) {
    return isEnum(type) ? "Arguments.word(" + value + ")" : value;
  }

  private static boolean isRecord(TypeMirror type) {
    return type instanceof DeclaredType declared
        && declared.asElement().getKind() == ElementKind.RECORD
        && !type.toString().equals("endfloat.units.Uncertain");
  }

  private static boolean isEnum(TypeMirror type) {
    return type instanceof DeclaredType declared
        && declared.asElement().getKind() == ElementKind.ENUM;
  }

  private static String declaration(
      Element element, String name, TypeMirror type, String description) {
    String form = form(element, type);
    String unit = "";
    if (form.equals("QUANTITY") || form.equals("UNCERTAIN") || form.equals("LIST")) {
      In in = element.getAnnotation(In.class);
      if (in == null) {
        throw new DefinitionException(
            element, "the result " + element.getSimpleName() + " carries no @In: say its unit");
      }
      unit = ParameterWriter.known(element, in.value());
    }
    return "new Result("
        + String.join(
            ", ",
            Names.literal(name),
            Names.literal(description),
            "Result.Form." + form,
            Names.literal(unit),
            ParameterWriter.listed(ParameterWriter.choices(type)))
        + ")";
  }

  private static String form(Element element, TypeMirror type) {
    String name = type.toString().replaceAll("@\\S+(\\([^)]*\\))?\\s+", "");
    return switch (name) {
      case "double" -> "QUANTITY";
      case "double[]" -> "LIST";
      case "boolean" -> "TRUTH";
      case "java.lang.String" -> "TEXT";
      case "endfloat.units.Uncertain" -> "UNCERTAIN";
      default -> {
        if (isEnum(type)) {
          yield "TEXT";
        }
        throw new DefinitionException(
            element,
            "a result is double, double[], boolean, String, an enum or Uncertain, or a record of these, not "
                + name);
      }
    };
  }
}

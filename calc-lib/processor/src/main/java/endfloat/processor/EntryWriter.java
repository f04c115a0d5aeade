package endfloat.processor;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.TypesetAs;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import javax.lang.model.element.Element;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;
import javax.lang.model.element.VariableElement;
import javax.lang.model.util.ElementFilter;
import javax.lang.model.util.Elements;
import javax.lang.model.util.Types;

/** Writes one catalogue entry from one annotated method. */
final class EntryWriter {
  private static final String PROGRESS = "endfloat.definition.Progress";

  private final Elements elements;
  private final Types types;
  private final ParameterWriter parameters;
  private final ResultWriter results;

  EntryWriter(Elements elements, Types types) {
    this.elements = elements;
    this.types = types;
    this.parameters = new ParameterWriter(elements);
    this.results = new ResultWriter(elements);
  }

  static String nameOf(ExecutableElement method) {
    String given = method.getAnnotation(Calculates.class).name();
    return given.isEmpty() ? Names.snake(method.getSimpleName().toString()) : given;
  }

  /** {@code new Calculation(...)}. */
  String entry(ExecutableElement method, String subject) {
    if (!method.getModifiers().containsAll(List.of(Modifier.PUBLIC, Modifier.STATIC))) {
      throw new DefinitionException(method, "a calculation is a public static method");
    }
    Calculates about = method.getAnnotation(Calculates.class);
    if (about.source().isBlank()) {
      throw new DefinitionException(method, "a calculation names its source");
    }
    JavadocText javadoc = JavadocText.of(elements.getDocComment(method));
    if (javadoc.summary().isEmpty()) {
      throw new DefinitionException(method, "a calculation says in its Javadoc what it gives");
    }
    TypesetAs formula = method.getAnnotation(TypesetAs.class);
    List<? extends VariableElement> shown = shown(method);
    unitVariables(method, shown);
    String taken = taken(shown);
    String call =
        owner(method)
            + "."
            + method.getSimpleName()
            + "("
            + taken
            + (shown.size() < method.getParameters().size() ? ", progress" : "")
            + ")";
    return "new Calculation(\n      "
        + String.join(
            ",\n      ",
            Names.literal(nameOf(method)),
            Names.literal(subject),
            Names.literal(javadoc.summary()),
            Names.literal(javadoc.rest()),
            declarations(shown, javadoc),
            results.declarations(method, javadoc),
            Names.literal(about.source()),
            texts(about.cautions()),
            texts(about.terms()),
            formula == null
                ? "Optional.empty()"
                : "Optional.of(" + Names.literal(formula.value()) + ")",
            String.valueOf(about.heavy()),
            "(a, progress) -> {\n      " + results.body(method, call) + "}",
            companion(method, about.partials(), "double[][]", "Partials", taken),
            modelError(method, about.modelError(), taken),
            companion(method, about.scatter(), "endfloat.units.Scatter", "OfData", taken))
        + ")";
  }

  /** The parts that a method takes lists of, by the name of their constant. */
  List<TypeElement> parts(ExecutableElement method) {
    List<TypeElement> parts = new ArrayList<>();
    for (VariableElement parameter : shown(method)) {
      if (ParameterWriter.form(parameter, parameter.asType()).equals("PARTS")) {
        parts.add(ParameterWriter.partOf(parameter.asType()));
      }
    }
    return parts;
  }

  String partDeclaration(TypeElement part) {
    return parameters.partDeclaration(part);
  }

  static List<? extends VariableElement> shown(ExecutableElement method) {
    List<? extends VariableElement> all = method.getParameters();
    boolean progress =
        !all.isEmpty() && all.get(all.size() - 1).asType().toString().equals(PROGRESS);
    return progress ? all.subList(0, all.size() - 1) : all;
  }

  private String declarations(List<? extends VariableElement> shown, JavadocText javadoc) {
    return shown.stream()
        .map(
            p ->
                parameters.declaration(
                    p,
                    p.getSimpleName().toString(),
                    p.asType(),
                    javadoc.parameters().getOrDefault(p.getSimpleName().toString(), "")))
        .collect(Collectors.joining(",\n        ", "List.of(", ")"));
  }

  private String taken(List<? extends VariableElement> shown) {
    List<String> taken = new ArrayList<>();
    for (VariableElement parameter : shown) {
      taken.add(parameters.taken(parameter, parameter.asType(), "a", taken.size()));
    }
    return String.join(", ", taken);
  }

  private static String owner(Element method) {
    return ((TypeElement) method.getEnclosingElement()).getQualifiedName().toString();
  }

  /** A unit variable of the result must be one of an argument, or nothing fixes it. */
  private static void unitVariables(
      ExecutableElement method, List<? extends VariableElement> shown) {
    In given = method.getAnnotation(In.class);
    if (given != null
        && given.value().startsWith("<")
        && shown.stream()
            .map(p -> p.getAnnotation(In.class))
            .noneMatch(in -> in != null && in.value().equals(given.value()))) {
      throw new DefinitionException(
          method, "no argument is in " + given.value() + ": nothing fixes the unit of the result");
    }
  }

  /** A scalar's error is one number, a record's one for each of its numbers. */
  private String modelError(ExecutableElement method, String name, String taken) {
    if (method.getAnnotation(In.class) == null) {
      return companion(method, name, "double[]", "ModelError", taken);
    }
    return companion(method, name, "double", "ModelError", taken)
        .replaceFirst("a -> (.*)\\)$", "a -> new double[] {$1})");
  }

  private String companion(
      ExecutableElement method, String name, String result, String form, String taken) {
    if (name.isEmpty()) {
      return "Optional.empty()";
    }
    for (ExecutableElement other :
        ElementFilter.methodsIn(method.getEnclosingElement().getEnclosedElements())) {
      if (other.getSimpleName().contentEquals(name) && fits(other, method, result)) {
        return "Optional.of((Calculation."
            + form
            + ") a -> "
            + owner(method)
            + "."
            + name
            + "("
            + taken
            + "))";
      }
    }
    throw new DefinitionException(
        method,
        "there is no public static "
            + result
            + " "
            + name
            + " with the parameters of "
            + method.getSimpleName());
  }

  private boolean fits(ExecutableElement other, ExecutableElement method, String result) {
    List<? extends VariableElement> wanted = shown(method);
    if (!other.getModifiers().containsAll(List.of(Modifier.PUBLIC, Modifier.STATIC))
        || !other.getReturnType().toString().equals(result)
        || other.getParameters().size() != wanted.size()) {
      return false;
    }
    for (int i = 0; i < wanted.size(); i++) {
      if (!types.isSameType(
          types.erasure(other.getParameters().get(i).asType()),
          types.erasure(wanted.get(i).asType()))) {
        return false;
      }
    }
    return true;
  }

  private static String texts(String[] texts) {
    return Arrays.stream(texts)
        .map(Names::literal)
        .collect(Collectors.joining(", ", "List.of(", ")"));
  }
}

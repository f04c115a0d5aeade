package endfloat.processor;

import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.RecordComponentElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.util.Elements;

/** Writes the catalogue's parameters, and how a call hands them to the method. */
final class ParameterWriter {
  private final Elements elements;

  ParameterWriter(Elements elements) {
    this.elements = elements;
  }

  /** {@code new Parameter(...)} for a parameter of a method or a component of a part. */
  String declaration(Element element, String name, TypeMirror type, String description) {
    String form = form(element, type);
    String unit = unit(element, form);
    Optional<RangeText> range = range(element, unit);
    List<String> choices = choices(type);
    Optional<String> fallback = DefaultText.of(element, form, unit, range, choices);
    return "new Parameter("
        + String.join(
            ", ",
            Names.literal(Names.snake(name)),
            Names.literal(description),
            "Parameter.Form." + form,
            Names.literal(unit),
            optional(range.map(ParameterWriter::written)),
            optional(fallback.map(Names::literal)),
            listed(choices),
            optional(form.equals("PARTS") ? Optional.of(partName(type)) : Optional.empty()))
        + ")";
  }

  /** The Java expression that takes argument {@code array[index]} as the method wants it. */
  String taken(Element element, TypeMirror type, String array, int index) {
    String argument = array + "[" + index + "]";
    return switch (form(element, type)) {
      case "QUANTITY" -> "(Double) " + argument;
      case "LIST" -> "(double[]) " + argument;
      case "INDEXED" -> "(endfloat.units.Indexed) " + argument;
      case "TEXT" -> "(String) " + argument;
      case "CHOICE" -> "Arguments.choice(" + type + ".class, " + argument + ")";
      default -> "Arguments.parts(" + argument + ", " + constructor(partOf(type)) + ")";
    };
  }

  private String constructor(TypeElement part) {
    List<String> taken = new ArrayList<>();
    for (RecordComponentElement component : part.getRecordComponents()) {
      taken.add(taken(component, component.asType(), "c", taken.size()));
    }
    return "c -> new " + part.getQualifiedName() + "(" + String.join(", ", taken) + ")";
  }

  /** {@code new Part(...)} of the record in a list. */
  String partDeclaration(TypeElement part) {
    JavadocText javadoc = JavadocText.of(elements.getDocComment(part));
    return "new Part("
        + Names.literal(partWord(part))
        + ", List.of("
        + part.getRecordComponents().stream()
            .map(
                c ->
                    declaration(
                        c,
                        c.getSimpleName().toString(),
                        c.asType(),
                        javadoc.parameters().getOrDefault(c.getSimpleName().toString(), "")))
            .collect(Collectors.joining(",\n        "))
        + "))";
  }

  static String partWord(TypeElement part) {
    String given = part.getAnnotation(Part.class).name();
    return given.isEmpty() ? Names.snake(part.getSimpleName().toString()) : given;
  }

  private static String partName(TypeMirror type) {
    return "PART_" + partWord(partOf(type)).toUpperCase(java.util.Locale.ROOT);
  }

  static TypeElement partOf(TypeMirror list) {
    return (TypeElement)
        ((DeclaredType) ((DeclaredType) list).getTypeArguments().get(0)).asElement();
  }

  static String form(Element element, TypeMirror type) {
    String name = type.toString().replaceAll("@\\S+(\\([^)]*\\))?\\s+", "");
    if (name.equals("double")) {
      return "QUANTITY";
    }
    if (name.equals("double[]")) {
      return "LIST";
    }
    if (name.equals("java.lang.String")) {
      return "TEXT";
    }
    if (name.equals("endfloat.units.Indexed")) {
      return "INDEXED";
    }
    if (type instanceof DeclaredType declared) {
      if (declared.asElement().getKind() == ElementKind.ENUM) {
        return "CHOICE";
      }
      if (name.startsWith("java.util.List<")
          && partOf(type).getAnnotation(Part.class) != null
          && partOf(type).getKind() == ElementKind.RECORD) {
        return "PARTS";
      }
    }
    throw new DefinitionException(
        element,
        element.getSimpleName()
            + " is a "
            + name
            + "; a calculation takes double, double[], Indexed, String, an enum or a List of a record marked @Part");
  }

  private static String unit(Element element, String form) {
    In in = element.getAnnotation(In.class);
    boolean number = form.equals("QUANTITY") || form.equals("LIST") || form.equals("INDEXED");
    if (!number) {
      return "";
    }
    if (in == null) {
      throw new DefinitionException(
          element, element.getSimpleName() + " carries no @In: say its unit");
    }
    return known(element, in.value());
  }

  /** A unit that the table knows, or a unit variable, or a quotient or difference of two. */
  static String known(Element element, String unit) {
    if (!unit.matches("<\\w+>(?:[/-]<\\w+>)?")) {
      try {
        UnitTable.find(unit);
      } catch (UnitException e) {
        throw new DefinitionException(element, "@In(\"" + unit + "\"): " + e.getMessage());
      }
    }
    return unit;
  }

  private static Optional<RangeText> range(Element element, String unit) {
    Range range = element.getAnnotation(Range.class);
    if (range == null) {
      return Optional.empty();
    }
    if (unit.isEmpty()) {
      throw new DefinitionException(
          element, element.getSimpleName() + " is no number to range over");
    }
    try {
      return Optional.of(RangeText.of(range.value(), unit));
    } catch (IllegalArgumentException | UnitException e) {
      throw new DefinitionException(
          element, "@Range(\"" + range.value() + "\"): " + e.getMessage());
    }
  }

  private static String written(RangeText range) {
    return "new ValidRange("
        + String.join(
            ", ",
            Names.literal(range.text()),
            number(range.least()),
            number(range.greatest()),
            String.valueOf(range.leastIncluded()),
            String.valueOf(range.greatestIncluded()))
        + ")";
  }

  private static String optional(Optional<String> java) {
    return java.map(text -> "Optional.of(" + text + ")").orElse("Optional.empty()");
  }

  private static String number(double value) {
    if (Double.isInfinite(value)) {
      return value > 0 ? "Double.POSITIVE_INFINITY" : "Double.NEGATIVE_INFINITY";
    }
    return Double.toString(value);
  }

  /** Texts of an enum, none for any other type. */
  static List<String> choices(TypeMirror type) {
    if (type instanceof DeclaredType declared
        && declared.asElement().getKind() == ElementKind.ENUM) {
      return declared.asElement().getEnclosedElements().stream()
          .filter(e -> e.getKind() == ElementKind.ENUM_CONSTANT)
          .map(e -> Names.words(e.getSimpleName().toString()))
          .toList();
    }
    return List.of();
  }

  static String listed(List<String> texts) {
    return texts.stream().map(Names::literal).collect(Collectors.joining(", ", "List.of(", ")"));
  }
}

package endfloat.processor;

import endfloat.definition.Calculates;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.annotation.processing.AbstractProcessor;
import javax.annotation.processing.RoundEnvironment;
import javax.annotation.processing.SupportedAnnotationTypes;
import javax.annotation.processing.SupportedOptions;
import javax.lang.model.SourceVersion;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.util.ElementFilter;
import javax.tools.Diagnostic;

/**
 * Gathers every method marked {@link Calculates} into the catalogue: one generated class a subject,
 * {@code LibraryEntries} over them all, and the typed face of each subject. A definition that
 * cannot be read is a compile error at its place.
 */
@SupportedAnnotationTypes("endfloat.definition.Calculates")
@SupportedOptions("endfloat.checks")
public final class CalculationProcessor extends AbstractProcessor {
  private static final String CATALOGUE = "endfloat.catalogue";

  private final Map<String, List<String>> entries = new TreeMap<>();
  private final Map<String, Map<String, String>> parts = new TreeMap<>();
  private final Map<String, FacadeWriter> facades = new TreeMap<>();
  private final Map<String, ExecutableElement> names = new TreeMap<>();
  private boolean refused;

  @Override
  public SourceVersion getSupportedSourceVersion() {
    return SourceVersion.latest();
  }

  @Override
  public boolean process(Set<? extends TypeElement> annotations, RoundEnvironment round) {
    EntryWriter writer =
        new EntryWriter(processingEnv.getElementUtils(), processingEnv.getTypeUtils());
    for (ExecutableElement method :
        ElementFilter.methodsIn(round.getElementsAnnotatedWith(Calculates.class))) {
      try {
        add(writer, method);
      } catch (DefinitionException e) {
        refused = true;
        processingEnv
            .getMessager()
            .printMessage(Diagnostic.Kind.ERROR, e.getMessage(), e.element());
      }
    }
    if (!annotations.isEmpty() && !refused && !round.errorRaised()) {
      write();
    }
    return false;
  }

  private void add(EntryWriter writer, ExecutableElement method) {
    String name = EntryWriter.nameOf(method);
    ExecutableElement other = names.putIfAbsent(name, method);
    if (other != null) {
      throw new DefinitionException(method, "two calculations are named " + name);
    }
    String pack =
        processingEnv.getElementUtils().getPackageOf(method).getQualifiedName().toString();
    String subject = pack.substring(pack.lastIndexOf('.') + 1);
    entries.computeIfAbsent(subject, s -> new ArrayList<>()).add(writer.entry(method, subject));
    facades
        .computeIfAbsent(subject, s -> new FacadeWriter(processingEnv.getElementUtils()))
        .add(method, EntryWriter.shown(method));
    for (TypeElement part : writer.parts(method)) {
      parts
          .computeIfAbsent(subject, s -> new TreeMap<>())
          .put(ParameterWriter.partWord(part), writer.partDeclaration(part));
    }
    String checks = processingEnv.getOptions().get("endfloat.checks");
    if (checks == null) {
      throw new DefinitionException(
          method, "say where the checks of the calculations are: -Aendfloat.checks=FOLDER");
    }
    new CheckDemand(Path.of(checks)).of(name, method);
  }

  private void write() {
    entries.forEach(
        (subject, calculations) ->
            file(
                CATALOGUE,
                Names.capital(subject) + "Entries",
                subjectClass(subject, calculations)));
    file(CATALOGUE, "LibraryEntries", libraryClass());
    facades.forEach(
        (subject, facade) ->
            file(FacadeWriter.PACKAGE, Names.capital(subject), facade.text(subject)));
  }

  private String subjectClass(String subject, List<String> calculations) {
    StringBuilder body = new StringBuilder();
    parts
        .getOrDefault(subject, Map.of())
        .forEach(
            (name, declaration) ->
                body.append("  static final Part PART_")
                    .append(name.toUpperCase(java.util.Locale.ROOT))
                    .append(" =\n      ")
                    .append(declaration)
                    .append(";\n\n"));
    List<String> calls = new ArrayList<>();
    for (String calculation : calculations) {
      String method = "entry" + calls.size();
      calls.add(method + "()");
      body.append("  private static Calculation ")
          .append(method)
          .append("() {\n    return ")
          .append(calculation)
          .append(";\n  }\n\n");
    }
    return header()
        + "final class "
        + Names.capital(subject)
        + "Entries {\n"
        + body
        + "  static List<Calculation> all() {\n    return List.of("
        + String.join(", ", calls)
        + ");\n  }\n}\n";
  }

  private String libraryClass() {
    Set<String> subjects = new TreeSet<>(entries.keySet());
    return header()
        + "final class LibraryEntries {\n  static List<Calculation> all() {\n    return java.util.stream.Stream.of("
        + subjects.stream()
            .map(s -> Names.capital(s) + "Entries.all()")
            .collect(Collectors.joining(", "))
        + ")\n        .flatMap(List::stream)\n        .toList();\n  }\n}\n";
  }

  private static String header() {
    return "package endfloat.catalogue;\n\nimport java.util.List;\nimport java.util.Optional;\n\n/** Generated from the annotated methods. */\n@SuppressWarnings(\"all\")\n";
  }

  private void file(String pack, String name, String text) {
    try (Writer out = processingEnv.getFiler().createSourceFile(pack + "." + name).openWriter()) {
      out.write(text);
    } catch (IOException e) {
      processingEnv
          .getMessager()
          .printMessage(Diagnostic.Kind.ERROR, "cannot write " + name + ": " + e.getMessage());
    }
  }
}

package endfloat.engine;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Result;
import endfloat.working.LineProblem;
import endfloat.working.Terms;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Says messages in the words of the record's side, the names that stand in them left alone. */
final class OwnNames {
  private static final Pattern WORD = Pattern.compile("[\\p{L}_][\\p{L}\\p{Nd}_]*");

  private final Terms terms;
  private final Set<String> names = new HashSet<>();

  OwnNames(ValueGraph graph) {
    terms = graph.settings().terms();
    if (terms == Terms.BRITISH) {
      return;
    }
    graph.slots().forEach(slot -> add(slot.name()));
    graph.source().materials().forEach(material -> add(material.name()));
    for (Clause clause : graph.source().clauses()) {
      if (clause instanceof Clause.Readings readings) {
        readings.readings().forEach(this::add);
      } else if (clause instanceof Clause.Working working) {
        WORD.matcher(working.text())
            .results()
            .map(MatchResult::group)
            .distinct()
            .forEach(this::written);
      }
    }
  }

  private void add(endfloat.record.Reading reading) {
    add(reading.material());
    reading.axes().forEach(this::add);
    reading.entries().forEach(entry -> entry.at().values().forEach(this::add));
  }

  private void add(String name) {
    names.add(name.toLowerCase(Locale.ROOT));
  }

  /** Arguments and results go by the names of the language where their function is written. */
  private void written(String word) {
    add(word);
    Catalogue library = Catalogue.library();
    for (Optional<Calculation> calculation :
        List.of(library.find(word, false), library.find(word, true))) {
      calculation.ifPresent(
          c -> {
            parameters(c.parameters(), names);
            c.results().stream().map(Result::name).forEach(names::add);
          });
    }
    library.part(word).ifPresent(p -> parameters(p.components(), names));
  }

  private static void parameters(List<Parameter> parameters, Set<String> names) {
    parameters.stream().map(Parameter::name).forEach(names::add);
  }

  LineProblem said(LineProblem problem) {
    return terms == Terms.BRITISH || problem == null
        ? problem
        : new LineProblem(
            problem.span(),
            terms.say(problem.message(), names),
            terms.say(problem.wayOut(), names),
            problem.severity());
  }
}

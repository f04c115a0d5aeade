package endfloat.engine;

import endfloat.engine.Value.Series;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;

/**
 * The elements of a series, each made when it is asked for. They never change, and may be read in
 * any thread.
 */
final class SeriesElements extends AbstractList<Figure.Element> implements RandomAccess {
  private final Series series;
  private final List<Judgement> judgements;
  private final Maker maker;
  private Map<List<String>, List<Judgement>> byStation;

  /** Makes one element. */
  interface Maker {
    Figure.Element make(int at, List<Judgement> judged);
  }

  SeriesElements(Series series, List<Judgement> judgements, Maker maker) {
    this.series = series;
    this.judgements = judgements;
    this.maker = maker;
  }

  @Override
  public Figure.Element get(int index) {
    return maker.make(index, judged(index));
  }

  private synchronized List<Judgement> judged(int index) {
    List<String> labels = series.labels().get(index);
    if (judgements.isEmpty()) {
      return List.of();
    }
    if (labels.isEmpty()) {
      return ofPlainList(index);
    }
    if (byStation == null) {
      byStation = new HashMap<>();
      for (Judgement judgement : judgements) {
        List<String> station = List.copyOf(judgement.station().values());
        byStation.computeIfAbsent(station, at -> new ArrayList<>(1)).add(judgement);
      }
    }
    return List.copyOf(byStation.getOrDefault(labels, List.of()));
  }

  /** A list without stations is judged in its order, by one limit after the other. */
  private List<Judgement> ofPlainList(int index) {
    List<Judgement> judged = new ArrayList<>(1);
    for (int i = index; i < judgements.size(); i += series.size()) {
      judged.add(judgements.get(i));
    }
    return List.copyOf(judged);
  }

  @Override
  public int size() {
    return series.size();
  }
}

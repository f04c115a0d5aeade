package endfloat.engine;

/**
 * One independent source of uncertainty: an input as typed, an instrument's offset, one reading's
 * scatter, a property of a material. A gradient holds for each root the change of the value as that
 * root moves by one standard uncertainty, so a root by itself has no size.
 *
 * <p>Equal by its id, which says what it is and never where it stands: a record gives the same
 * roots whatever order it was typed in.
 */
public final class Root implements Comparable<Root> {
  /** What a root stands for. */
  public enum Kind {
    /** The spread of an input, typed after ± or as a distribution. */
    INPUT,
    /** Zero of an instrument, shared by all readings taken with it. */
    OFFSET,
    /** Scale of an instrument, shared too. */
    GAIN,
    /** What an instrument adds anew to each reading. */
    OWN,
    /** Step of the indication. */
    RESOLUTION,
    /** Scatter of repeats. */
    SCATTER,
    /** Temperature of a part while it was measured. */
    TEMPERATURE,
    /** A value of the calculation library that has a spread of its own. */
    LIBRARY,
    /** The error of a calculation's own model. */
    MODEL,
    /** The unknown of a solve, while it is solved. */
    UNKNOWN
  }

  private final String id;
  private final long key;
  private final Kind kind;
  private final String subject;
  private final String words;
  private final double degreesOfFreedom;

  /**
   * @param subject the name, instrument, or material it belongs to
   * @param words where its size comes from, for people
   * @param degreesOfFreedom infinite where not known
   */
  Root(String id, Kind kind, String subject, String words, double degreesOfFreedom) {
    this.id = id;
    this.key = spread(id);
    this.kind = kind;
    this.subject = subject;
    this.words = words;
    this.degreesOfFreedom = degreesOfFreedom;
  }

  /** FNV-1a with a final mix: an order that is the same in every run and quick to compare. */
  private static long spread(String id) {
    long hash = 0xcbf29ce484222325L;
    for (int i = 0; i < id.length(); i++) {
      hash = (hash ^ id.charAt(i)) * 0x100000001b3L;
    }
    hash = (hash ^ (hash >>> 33)) * 0xff51afd7ed558ccdL;
    return hash ^ (hash >>> 33);
  }

  public String id() {
    return id;
  }

  public Kind kind() {
    return kind;
  }

  public String subject() {
    return subject;
  }

  public String words() {
    return words;
  }

  public double degreesOfFreedom() {
    return degreesOfFreedom;
  }

  /** Whether nothing about it differs, the words too. */
  @SuppressWarnings("ReferenceEquality") // the same object first, which it mostly is
  boolean sameAs(Root other) {
    return this == other
        || (key == other.key
            && id.equals(other.id)
            && Double.compare(degreesOfFreedom, other.degreesOfFreedom) == 0
            && words.equals(other.words));
  }

  @Override
  public int compareTo(Root other) {
    if (this == other) {
      return 0;
    }
    return key != other.key ? Long.compare(key, other.key) : id.compareTo(other.id);
  }

  @Override
  public boolean equals(Object other) {
    return this == other || (other instanceof Root r && key == r.key && id.equals(r.id));
  }

  @Override
  public int hashCode() {
    return Long.hashCode(key);
  }

  @Override
  public String toString() {
    return id;
  }
}

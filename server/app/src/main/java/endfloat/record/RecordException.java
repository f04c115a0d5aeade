package endfloat.record;

import java.util.List;

/** A record cannot be read, written or found; the message says what and where, in words. */
public class RecordException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** What the reader must do next. */
  public enum Reason {
    /** The file is no JSON, or JSON that two readers could understand differently. */
    NOT_JSON,
    /** It is JSON, but not a record as the schema has it. */
    NOT_A_RECORD,
    /** Written by a newer Endfloat. */
    NEWER,
    TOO_LARGE,
    NOT_FOUND,
    /** A name that is unsafe as a file name, or a path or link out of the shelf. */
    OFF_THE_SHELF,
    /** The file system said no. */
    DISK
  }

  private final Reason reason;
  private final transient List<String> problems;

  public RecordException(Reason reason, String message) {
    this(reason, message, List.of(message), null);
  }

  public RecordException(Reason reason, String message, Throwable cause) {
    this(reason, message, List.of(message), cause);
  }

  RecordException(Reason reason, String message, List<String> problems, Throwable cause) {
    super(message, cause);
    this.reason = reason;
    this.problems = List.copyOf(problems);
  }

  public Reason reason() {
    return reason;
  }

  /** Every problem found, each a sentence that stands alone. */
  public List<String> problems() {
    return problems == null ? List.of(getMessage()) : problems;
  }
}
